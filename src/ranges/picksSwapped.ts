import { type Cell, isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Problem } from "../nouns/problem";
import { isAmountLike } from "./isAmountLike";
import { isDateSerial } from "./isDateSerial";
import type { LogRanges } from "./pickRanges";
import { readDate } from "./readDate";

/** So many filled cells are looked at; a range that starts with all of the wrong sort is the wrong range. */
const LOOKED_AT = 50;

/**
 * Whether a log's amounts stand in another argument: where they hold names and the labels numbers, or where they hold
 * dates and the dates are none. Null when they do not.
 */
export function picksSwapped({ owners, amounts, dates, besides }: LogRanges): Problem | null {
  const sizes = firstFilled(amounts);
  if (dates !== null && mostAreDates(sizes) && holdsAmounts(firstFilled(dates))) return swapped(dates, amounts);
  if (sizes.length === 0 || sizes.some(isAmountLike)) return null;
  const labels = [owners, ...besides].filter((range) => range !== null);
  const other = labels.find((range) => holdsAmounts(firstFilled(range)));
  return other ? swapped(other, amounts) : null;
}

function swapped(first: CellRange, second: CellRange): Problem {
  return { problem: "ranges-swapped", first: first.argument, second: second.argument };
}

/** The first filled cells below the first, which may be a heading. */
function firstFilled(range: CellRange): readonly Cell[] {
  const filled: Cell[] = [];
  for (const row of range.cells.slice(1, 1 + 4 * LOOKED_AT)) filled.push(...row.filter((cell) => !isEmpty(cell)));
  return filled.slice(0, LOOKED_AT);
}

function mostAreDates(cells: readonly Cell[]): boolean {
  return 2 * cells.filter(isDate).length > cells.length;
}

/** A text that is a date, or one of the numbers that Excel has for the days of our years. */
function isDate(cell: Cell): boolean {
  return typeof cell === "number" ? isDateSerial(cell) : readDate(cell).means === "day";
}

function holdsAmounts(cells: readonly Cell[]): boolean {
  return cells.every(isAmountLike) && cells.some((cell) => typeof cell === "number" && !isDate(cell));
}
