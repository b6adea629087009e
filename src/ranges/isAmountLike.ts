import type { Cell } from "../nouns/cell";
import { headingOf } from "./headingOf";

/** Whether a cell may stand among amounts: a number, a lost-word and the like, whatever could not be a heading. */
export function isAmountLike(cell: Cell): boolean {
  return headingOf(cell) === null;
}
