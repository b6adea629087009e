import type { CellRange } from "../nouns/cellRange";
import { cellName } from "./cellName";
import { widthOf } from "./cellsOf";

/** Where a range stands, for sentences: "C1:C9", "C1" for one cell, the argument's name where no address is known. */
export function whereIs(range: CellRange): string {
  const { argument, cells, corner } = range;
  if (corner === null) return argument;
  const first = cellName(corner.row, corner.column);
  const last = cellName(corner.row + Math.max(0, cells.length - 1), corner.column + widthOf(range) - 1);
  return first === last ? first : `${first}:${last}`;
}
