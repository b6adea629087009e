import { type Cell, isEmpty } from "../nouns/cell";
import { dateInText } from "./dateInText";
import { headingParts } from "./headingParts";
import { isDateSerial } from "./isDateSerial";
import { isLostWord } from "./isLostWord";
import { isNoneWord } from "./isNoneWord";
import { isNotRecordedWord } from "./isNotRecordedWord";
import { readAmount } from "./readAmount";

/** What a column of a sheet holds; "notes" are not looked at. */
export type ColumnKind = "amount" | "date" | "label" | "notes";

/** Excel's numbers of the years 1998 to 2050 (METHODS 4.1), and such days written without marks. */
const isDateNumber = (number: number): boolean =>
  isDateSerial(number) || (number >= 19_980_101 && number <= 20_501_231 && number % 1 === 0);

const NAMED = "(?:bag|bed|block|id|label|plant|plot|position|pot|rep|row|spot|stake|tray)s?";

/** Headings of columns whose numbers are names: "Bed", "Plant no.", "Position in row"; not "Plant weight", "Bed 2". */
const NAMES = new RegExp(
  String.raw`^${NAMED}(?:[\s/_-]+(?:${NAMED}|and|code|in|letter|name|no\.?|nr\.?|number|of|tag|the)(?![\p{L}\p{N}]))*\s*(?:[([#].*)?$`,
  "iu",
);
const NOTES = /^(?:comment|note|remark)s?\b/i;

/**
 * What most cells of a column are (METHODS 8.11). A heading that names a unit decides between amounts and dates; one
 * such as "bed" or "plant" makes numbers names. Names in less than half of the rows are notes.
 *
 * @param cells without the heading; empty ones and errors tell nothing
 * @param heading null where there is none
 */
export function columnKind(cells: readonly Cell[], heading: string | null): ColumnKind {
  const { amount, date, label } = countKinds(cells);
  const filled = amount + date + label;
  if (heading !== null && NOTES.test(heading.trim())) return "notes";
  if (label > amount && label > date) return 2 * filled < cells.length ? "notes" : "label";
  if (heading !== null && headingParts(heading).unit !== null) return "amount";
  if (heading !== null && NAMES.test(heading.trim()) && date === 0) return "label";
  return date > amount ? "date" : "amount";
}

type Told = "amount" | "date" | "label";

function countKinds(cells: readonly Cell[]): Readonly<Record<Told, number>> {
  const counts = { amount: 0, date: 0, label: 0 };
  const known = new Map<string, Told>();
  for (const cell of cells) {
    if (typeof cell === "number") counts[isDateNumber(cell) ? "date" : "amount"]++;
    else if (typeof cell === "string" && !isEmpty(cell)) {
      const told = known.get(cell) ?? textKind(cell);
      known.set(cell, told);
      counts[told]++;
    }
  }
  return counts;
}

/** "1-2" without a year is a name rather than a day: plants and plots are numbered so. */
function textKind(text: string): Told {
  if (/^\s*\d{1,2}\s*-\s*\d{1,2}\s*$/.test(text)) return "label";
  if (/^\s*\d+\.?\s*$/.test(text) && !/^\s*\d{8}\s*$/.test(text)) return isDateNumber(Number(text)) ? "date" : "amount";
  if (dateInText(text) !== null) return "date";
  if (isNoneWord(text) || isNotRecordedWord(text) || isLostWord(text)) return "amount";
  return readAmount(text).amount === "read" ? "amount" : "label";
}

/** Whether a cell may stand in a heading row: a text that is no number and no date, or nothing. */
export function isHeadingLike(cell: Cell): boolean {
  return isEmpty(cell) || (typeof cell === "string" && textKind(cell) === "label");
}
