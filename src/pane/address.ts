import type { Corner } from "../nouns/cellRange";

/** One cell of a sheet; rows and columns count from 1. */
export interface Spot {
  readonly row: number;
  readonly column: number;
}

/**
 * The first cell of an address as the sheet writes it ("B2", "B2:C9", "B:B", "3:5"), row or column 1 where it has
 * none.
 */
export function firstSpot(address: string): Spot {
  const [, letters = "", digits = ""] = /^\$?([A-Za-z]*)\$?(\d*)/.exec(address) ?? [];
  const column = [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return { row: Number(digits) || 1, column: column || 1 };
}

/** A cell's address: "B2". */
export function addressOf({ row, column }: Spot): string {
  let letters = "";
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${row}`;
}

/** The address of the first cell: "B2" of "B2:C9". */
export function firstCell(address: string): string {
  return addressOf(firstSpot(address));
}

/** Whether a cell lies in a range of the same sheet ("B2:B9", "B:B", "3:5"). */
export function contains(range: string, cell: string): boolean {
  const [first = "", last = first] = range.split(":");
  const [from, to, at] = [firstSpot(first), firstSpot(last), firstSpot(cell)];
  const isAbove = at.row < from.row || at.column < from.column;
  const isBelow = (/\d/.test(last) && at.row > to.row) || (/[a-z]/i.test(last) && at.column > to.column);
  return !isAbove && !isBelow;
}

/** The cell so many rows and columns further on. */
export function beyond({ row, column }: Spot | Corner, rows: number, columns: number): Spot {
  return { row: row + rows, column: column + columns };
}
