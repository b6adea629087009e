import type { Cell } from "./cell";

/** The sheet cell in the top-left corner of a range: rows and columns count from 1. */
export interface Corner {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** One argument of a worksheet function: a block of cells, row by row. A typed value is a block of one cell. */
export interface CellRange {
  /** The argument's name as the grower sees it in Excel's help: "usual", "lost_plants". */
  readonly argument: string;
  /** Every row has as many cells as the first. */
  readonly cells: readonly (readonly Cell[])[];
  /** Where the block stands; null for a typed value, an expression, or a host that does not say. */
  readonly corner: Corner | null;
  /** False when an empty cell may have arrived here as 0, so that a zero may not be a zero. */
  readonly zerosVerified: boolean;
}
