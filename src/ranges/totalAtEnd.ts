/** One number of a column, in reading order; `index` is its cell's within the range. A "none" is no such number. */
export interface ColumnNumber {
  readonly value: number;
  readonly index: number;
  /** True for a number cell, which SUM and AVERAGE count; they pass over texts. */
  readonly numberCell: boolean;
}

/** What stands in the last number's place. */
export interface EndRow {
  readonly row: "total" | "average" | "equals-average";
  readonly index: number;
}

/** So many numbers must stand above a total or an average. */
const FEWEST_ABOVE = 4;

/** Sums of decimals end in rounding noise. */
const NOISE = 1e-9;

/**
 * Whether a column ends with its own total or average (METHODS 4.1).
 *
 * "total": the last number is the sum of at least four above it and at least twice the largest of them. "average": it
 * is their average with more decimals than any of them. "equals-average": it is their average otherwise, which may be
 * chance. A total with the average of the same numbers right below it is a total as well. Sums and averages over the
 * number cells alone count too, as that is what the sheet's own functions give.
 */
export function totalAtEnd(numbers: readonly ColumnNumber[]): EndRow | null {
  return endRow(numbers) ?? totalThenAverage(numbers);
}

function endRow(numbers: readonly ColumnNumber[]): EndRow | null {
  const last = numbers.at(-1);
  if (last === undefined) return null;
  const rows = readings(numbers.slice(0, -1)).map((above) => rowOver(above, last.value));
  const row = rows.find((found) => found === "total" || found === "average") ?? rows.find((found) => found !== null);
  return row ? { row, index: last.index } : null;
}

/** The last number repeats the average of the plants, but a total stands between. */
function totalThenAverage(numbers: readonly ColumnNumber[]): EndRow | null {
  const [average, upToTotal] = [numbers.at(-1), numbers.slice(0, -1)];
  const total = endRow(upToTotal);
  if (!average || total?.row !== "total") return null;
  const plants = readings(upToTotal.slice(0, -1));
  return plants.some((above) => isNear(average.value, sum(above) / above.length)) ? total : null;
}

function rowOver(above: readonly number[], last: number): EndRow["row"] | null {
  if (above.length < FEWEST_ABOVE) return null;
  const [total, largest] = [sum(above), above.reduce((most, value) => Math.max(most, value), 0)];
  if (largest > 0 && isNear(last, total) && last >= 2 * largest) return "total";
  if (!isNear(last, total / above.length)) return null;
  const most = above.reduce((decimals, value) => Math.max(decimals, decimalsOf(value)), 0);
  return decimalsOf(last) > most ? "average" : "equals-average";
}

/** The numbers above, all of them and those in number cells alone. */
function readings(above: readonly ColumnNumber[]): readonly (readonly number[])[] {
  const inNumberCells = above.filter(({ numberCell }) => numberCell);
  const all = above.map(({ value }) => value);
  return inNumberCells.length === above.length ? [all] : [all, inNumberCells.map(({ value }) => value)];
}

function isNear(number: number, other: number): boolean {
  return Math.abs(number - other) <= NOISE * Math.max(Math.abs(number), Math.abs(other));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}

/** Decimal places of a number to 15 digits, as a sheet shows it: 0.1 + 0.2 has one. */
function decimalsOf(value: number): number {
  const [mantissa = "", exponent = "0"] = String(Number(value.toPrecision(15))).split("e");
  const decimals = mantissa.split(".")[1]?.length ?? 0;
  return Math.max(0, decimals - Number(exponent));
}
