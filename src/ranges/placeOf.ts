import type { CellRange } from "../nouns/cellRange";
import type { Place } from "../nouns/place";
import { cellName } from "./cellName";
import { widthOf } from "./cellsOf";

/**
 * Where one cell of a range stands.
 *
 * @param index the cell's number within the range, row by row, from 0
 */
export function placeOf(range: CellRange, index: number): Place {
  const width = widthOf(range);
  const [down, across] = [Math.floor(index / width), index % width];
  const { argument, corner } = range;
  return {
    argument,
    row: down + 1,
    column: width === 1 ? null : across + 1,
    cell: corner && cellName(corner.row + down, corner.column + across),
  };
}
