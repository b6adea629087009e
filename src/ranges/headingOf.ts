import { type Cell, isEmpty } from "../nouns/cell";
import { isLostWord } from "./isLostWord";
import { isNoneWord } from "./isNoneWord";
import { isNotRecordedWord } from "./isNotRecordedWord";
import { readAmount } from "./readAmount";
import { readPercent } from "./readPercent";

/**
 * The heading in the first cell of an amounts range: a text that reads as no number and is no lost-, none- or
 * not-recorded word ("not weighed" says something about the first plant). Null for any other cell.
 */
export function headingOf(cell: Cell | undefined): string | null {
  if (typeof cell !== "string" || isEmpty(cell)) return null;
  if (isNoneWord(cell) || isNotRecordedWord(cell) || isLostWord(cell)) return null;
  if (readAmount(cell).amount === "read" || readPercent(cell) !== null) return null;
  return cell.trim().replace(/\s+/g, " ");
}
