import type { Corner } from "../nouns/cellRange";

/** Excel's last row and last column (XFD). */
const LAST_ROW = 1_048_576;
const LAST_COLUMN = 16_384;

/** One end of an address; a whole column has no row, a whole row no column. */
interface End {
  readonly row: number | null;
  readonly column: number | null;
}

/**
 * The top-left corner of an address such as "Sheet1!B2:C9", "'My sheet''s'!$B$2", "B:B" or "2:4".
 *
 * @returns null when there is no address, or when it is not one block of cells ("A1,B2", "#REF!", a name)
 */
export function parseAddress(address: string | null | undefined): Corner | null {
  if (!address) return null;
  const bang = address.lastIndexOf("!");
  const ends = address
    .slice(bang + 1)
    .trim()
    .split(":")
    .map(parseEnd);
  const [first, second = first] = ends;
  const sheet = sheetName(address.slice(0, Math.max(0, bang)));
  if (sheet === null || ends.length > 2 || !first || !second || !sameSort(first, second, ends.length)) return null;
  return {
    sheet,
    row: Math.min(first.row ?? 1, second.row ?? 1),
    column: Math.min(first.column ?? 1, second.column ?? 1),
  };
}

/** Both ends name a cell, or both a column, or both a row; a column or row alone is no address. */
function sameSort(first: End, second: End, ends: number): boolean {
  if (ends === 1) return first.row !== null && first.column !== null;
  return (first.row === null) === (second.row === null) && (first.column === null) === (second.column === null);
}

function parseEnd(end: string): End | null {
  const [, letters = "", digits = ""] = /^\$?([A-Za-z]{1,3})?\$?([0-9]{1,7})?$/.exec(end) ?? [];
  if (letters + digits === "") return null;
  const row = digits === "" ? null : Number(digits);
  const column = letters === "" ? null : columnNumber(letters);
  if (row !== null && (row < 1 || row > LAST_ROW)) return null;
  return column !== null && column > LAST_COLUMN ? null : { row, column };
}

function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);
}

/**
 * Without its quotes and without the workbook's name in front: "'[Beds.xlsx]My sheet''s'" is "My sheet's".
 *
 * Null for what is no one sheet's name, as in "Beds!A1,Beds!C1".
 */
function sheetName(written: string): string | null {
  const [whole, quoted, plain = ""] = /^(?:'((?:[^']|'')+)'|([^'!,:]*))$/.exec(written) ?? [];
  if (whole === undefined) return null;
  const bare = quoted?.replaceAll("''", "'") ?? plain;
  return bare.slice(bare.lastIndexOf("]") + 1);
}
