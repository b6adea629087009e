/** A block of cells of one sheet; rows and columns count from 0. */
export interface Area {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Excel's own size of a sheet. */
export const lastRow = 1_048_576;
export const lastColumn = 16_384;

/** Every cell of a sheet. */
export function wholeSheet(sheet: string): Area {
  return { sheet, row: 0, column: 0, rows: lastRow, columns: lastColumn };
}

/**
 * Reads an address as Excel's getRange does: "B2", "$B$2:C9", "B:B", "2:4", with or without a sheet before it.
 *
 * @returns null when it is no address
 */
export function areaOf(address: string, home: string): Area | null {
  const [, prefix, rest = ""] = /^(?:(.*)!)?([^!]*)$/s.exec(address) ?? [];
  const sheet = prefix === undefined ? home : prefix.replace(/^'(.*)'$/s, "$1").replaceAll("''", "'");
  const [, left = "", top = "", right = left, bottom = top] =
    /^\$?([A-Z]{0,3})\$?(\d*)(?::\$?([A-Z]{0,3})\$?(\d*))?$/i.exec(rest) ?? [];
  const whole = left === "" || top === "";
  if (left + top === "" || (whole && !rest.includes(":"))) return null;
  const [row, column] = [top === "" ? 0 : Number(top) - 1, left === "" ? 0 : columnOf(left)];
  const rows = top === "" ? lastRow : Number(bottom) - row;
  return { sheet, row, column, rows, columns: left === "" ? lastColumn : columnOf(right) + 1 - column };
}

/** The address with its sheet, as Excel's `address` gives it. */
export function addressOf({ sheet, row, column, rows, columns }: Area): string {
  const quoted = /^[A-Za-z_]\w*$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
  const [left, right] = [lettersOf(column), lettersOf(column + columns - 1)];
  if (rows === lastRow) return `${quoted}!${left}:${right}`;
  if (columns === lastColumn) return `${quoted}!${row + 1}:${row + rows}`;
  const first = `${left}${row + 1}`;
  return `${quoted}!${rows * columns === 1 ? first : `${first}:${right}${row + rows}`}`;
}

function columnOf(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function lettersOf(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : lettersOf(Math.floor(column / 26) - 1) + last;
}
