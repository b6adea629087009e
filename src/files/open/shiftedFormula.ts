import { columnName, columnNumber, last } from "../xml/address";

/** How far a formula is copied. */
export interface Steps {
  readonly down: number;
  readonly across: number;
}

const texts = `"(?:[^"]|"")*"`;
const quotedSheets = `'(?:[^']|'')*'`;
const words = "[A-Za-z_\\\\][\\w.\\\\]*(?=[(!\\[])";
const cell = String.raw`(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d{0,6})(?![\w.(!])`;
const columns = String.raw`(\$?)([A-Za-z]{1,3}):(\$?)([A-Za-z]{1,3})(?![\w.(!])`;
const rows = String.raw`(\$?)([1-9]\d{0,6}):(\$?)([1-9]\d{0,6})(?![\w.])`;
const pieces = new RegExp(`${texts}|${quotedSheets}|${words}|(?<![\\w.$])(?:${cell}|${columns}|${rows})|[\\w.$]+`, "g");

/**
 * A formula as it reads when it is copied: its relative references move along, as ECMA-376 part 1, 18.3.1.40 tells of
 * shared formulas. A reference that would leave the sheet becomes #REF!.
 *
 * @param formula in the file's form, without "="
 */
export function shiftedFormula(formula: string, { down, across }: Steps): string {
  return formula.replaceAll(pieces, (whole, ...found) => {
    const [d1, c1, d2, r1, e1, from, e2, to, f1, top, f2, bottom] = found as (string | undefined)[];
    if (c1 !== undefined) return together([column(d1, c1, across), row(d2, r1, down)], "");
    if (from !== undefined) return together([column(e1, from, across), column(e2, to, across)], ":");
    if (top !== undefined) return together([row(f1, top, down), row(f2, bottom, down)], ":");
    return whole;
  });
}

function together(parts: readonly (string | undefined)[], between: string): string {
  return parts.includes(undefined) ? "#REF!" : parts.join(between);
}

function column(dollar = "", name = "", across = 0): string | undefined {
  if (dollar !== "") return dollar + name;
  const number = columnNumber(name) + across;
  return number < 0 || number > last.column ? undefined : columnName(number);
}

function row(dollar = "", name = "", down = 0): string | undefined {
  if (dollar !== "") return dollar + name;
  const number = Number(name) + down;
  return number < 1 || number > last.row + 1 ? undefined : String(number);
}
