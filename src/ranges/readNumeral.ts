/** A run of digits with its commas, points and thousands marks, as read. */
export interface Numeral {
  readonly value: number;
  /** True for digits with at most a decimal point, where nothing had to be decided. */
  readonly plain: boolean;
  /** True when it may as well be `otherwise`. */
  readonly doubtful: boolean;
  /** The other possible reading; null where there is none. */
  readonly otherwise: number | null;
}

/**
 * Reads digits with commas and points, by METHODS 3:
 *
 * - one comma: decimal unless three digits follow it; with three digits still decimal when a 0 stands before it,
 *   when more than three digits do, or when `bigUnit`; else thousands, and doubtful ("1,250");
 * - several commas, or several points, in threes: thousands;
 * - both marks: the last one is the decimal mark;
 * - one point: decimal; with exactly three digits after it ("1.250") it is not plain, so that it gets listed;
 * - an apostrophe or a fixed space before three digits: thousands.
 *
 * @param bigUnit true with kg, lb, l or m, where three decimals are usual and thousands are not
 * @returns null when it is no number
 */
export function readNumeral(run: string, bigUnit: boolean): Numeral | null {
  const spaced = /^\d{1,3}(?:['\u00A0]\d{3})+(?:[.,]\d+)?$/.test(run);
  if (spaced) return decided(run.replace(/['\u00A0]/g, "").replace(",", "."));
  const [commas, points] = [count(run, ","), count(run, ".")];
  if (commas > 0 && points > 0) return bothMarks(run);
  if (commas > 1) return grouped(run, ",");
  if (points > 1) return grouped(run, ".");
  if (commas === 1) return oneComma(run, bigUnit);
  return onePoint(run, bigUnit);
}

function oneComma(run: string, bigUnit: boolean): Numeral | null {
  const decimal = decided(run.replace(",", "."));
  if (decimal === null || bigUnit || !/^[1-9]\d{0,2},\d{3}$/.test(run)) return decimal;
  return { value: Number(run.replace(",", "")), plain: false, doubtful: true, otherwise: decimal.value };
}

function onePoint(run: string, bigUnit: boolean): Numeral | null {
  if (!/^(?:\d+|\d*\.\d+)$/.test(run)) return null;
  const thousandsLike = !bigUnit && /^[1-9]\d{0,2}\.\d{3}$/.test(run);
  const otherwise = thousandsLike ? Number(run.replace(".", "")) : null;
  return { value: Number(run), plain: !thousandsLike, doubtful: false, otherwise };
}

/** "1,250.5" and "1.250,5": the first mark parts thousands, the last one decimals. */
function bothMarks(run: string): Numeral | null {
  const decimalAt = Math.max(run.lastIndexOf(","), run.lastIndexOf("."));
  const [whole, decimals] = [run.slice(0, decimalAt), run.slice(decimalAt + 1)];
  const thousands = grouped(whole, run[decimalAt] === "," ? "." : ",");
  return thousands && decided(`${thousands.value}.${decimals}`);
}

function grouped(run: string, mark: string): Numeral | null {
  const [first = "", ...threes] = run.split(mark);
  const inThrees = /^[1-9]\d{0,2}$/.test(first) && threes.every((three) => /^\d{3}$/.test(three));
  return inThrees ? decided(first + threes.join("")) : null;
}

/** A number that took a decision, but a sure one. */
function decided(digits: string): Numeral | null {
  if (!/^(?:\d+|\d*\.\d+)$/.test(digits)) return null;
  return { value: Number(digits), plain: false, doubtful: false, otherwise: null };
}

function count(text: string, mark: string): number {
  return text.split(mark).length - 1;
}
