/** An error value standing in a cell, such as "#N/A". */
export interface ErrorCell {
  readonly error: string;
}

/**
 * One worksheet cell after the host's own wrappings are taken off: a number (dates are serials), a text,
 * TRUE or FALSE, an error value, or `null` for an empty cell.
 */
export type Cell = number | string | boolean | null | ErrorCell;

export function isErrorCell(cell: Cell): cell is ErrorCell {
  return typeof cell === "object" && cell !== null;
}

/** Whether nothing is to be seen in a cell: it is empty, or holds a text of spaces. */
export function isEmpty(cell: Cell | undefined): boolean {
  return cell === undefined || cell === null || (typeof cell === "string" && cell.trim() === "");
}
