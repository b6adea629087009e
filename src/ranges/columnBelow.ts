import type { Cell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import { cellsOf, widthOf } from "./cellsOf";

/** Cells below each other, as a host hands over a column: one row a cell. */
export type CellColumn = readonly (readonly Cell[])[];

/**
 * A range's cells in reading order as one column, without the first few. A column is taken as it stands, as a log of a
 * hundred thousand picks is one.
 *
 * @param from how many cells to pass over
 */
export function columnBelow(range: CellRange, from: number): CellColumn {
  if (widthOf(range) === 1) return from === 0 ? range.cells : range.cells.slice(from);
  return cellsOf(range)
    .slice(from)
    .map((cell) => [cell]);
}

/** The cell of a column in a row; null below its end. */
export function cellIn(column: CellColumn, row: number): Cell {
  return column[row]?.[0] ?? null;
}
