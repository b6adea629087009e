import { type Cell, isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";

/** A range's cells in reading order: row by row. */
export function cellsOf(range: CellRange): readonly Cell[] {
  // most ranges are one column, and flat() takes ten times as long as this for it
  return widthOf(range) === 1 ? range.cells.map((row) => row[0] ?? null) : range.cells.flat();
}

/** How many columns a range has; at least 1, so that places can be worked out. */
export function widthOf(range: CellRange): number {
  return Math.max(1, range.cells[0]?.length ?? 1);
}

/** How many cells there are, in reading order, up to and with the last filled one. */
export function filledLength(range: CellRange): number {
  return cellsOf(range).findLastIndex((cell) => !isEmpty(cell)) + 1;
}
