import { isErrorCell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Problem } from "../nouns/problem";
import { cellsOf } from "../ranges/cellsOf";
import { placeOf } from "../ranges/placeOf";

/**
 * The refusal of the first error value that stands where a name is due; null when there is none.
 *
 * @param every the width of a block whose first column holds the names; 1 where every cell is one
 */
export function errorForName(range: CellRange, every: number): Problem | null {
  for (const [at, cell] of cellsOf(range).entries()) {
    const isName = at % every === 0;
    if (isName && isErrorCell(cell)) {
      return { problem: "error-for-name", place: placeOf(range, at), given: cell.error };
    }
  }
  return null;
}
