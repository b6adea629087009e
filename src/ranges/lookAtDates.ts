import type { Cell } from "../nouns/cell";
import type { Remark } from "../nouns/reading";
import type { Noted } from "./noted";
import { type DateEntry, readDates } from "./readDates";

/** A column of dates as read. */
export interface LookedDates {
  /** Excel's number for each row's day; NaN where it is not certain. */
  readonly serials: Float64Array;
  /** False when no date names its year: the year of the serials is a stand-in. */
  readonly yearsKnown: boolean;
  readonly noted: readonly Noted[];
}

/**
 * Reads a column of dates, and notes every one that took its order or year from the rest or is no date for certain.
 *
 * @param skip rows that are not looked at
 */
export function lookAtDates(cells: readonly Cell[], skip: ReadonlySet<number>): LookedDates {
  const { entryOf, yearsKnown } = readDates(cells.filter((_, row) => !skip.has(row)));
  const serials = new Float64Array(cells.length).fill(Number.NaN);
  const noted: Noted[] = [];
  for (const [row, cell] of cells.entries()) {
    if (skip.has(row)) continue;
    const entry = entryOf(cell);
    if (entry.kind === "date") serials[row] = entry.serial;
    const remark = remarkOn(entry);
    if (remark !== null) noted.push({ row, remark });
  }
  return { serials, yearsKnown, noted };
}

function remarkOn(entry: DateEntry): Remark | null {
  if (entry.kind === "date") {
    const settled = entry.read === "order-of-column" || entry.read === "year-of-column";
    return settled ? { kind: "date-settled", serial: entry.serial } : null;
  }
  switch (entry.why) {
    case "empty":
      return { kind: "not-recorded", why: "empty" };
    case "error":
      return { kind: "error" };
    case "not-a-date":
      return { kind: "unreadable", why: "not-a-date" };
    default:
      return { kind: "unreadable", why: entry.why, days: entry.readings };
  }
}
