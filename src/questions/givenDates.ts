import { isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Argument } from "../ranges/option";

/** The dates of a log; null where they are left out, or one empty cell stands for them. */
export function givenDates(given: Argument): CellRange | null {
  if (!given) return null;
  const [row] = given.cells;
  const isNothing = given.cells.length === 1 && row?.length === 1 && isEmpty(row[0] ?? null);
  return isNothing ? null : given;
}
