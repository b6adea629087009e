import type { Cell } from "../nouns/cell";
import type { WrittenDay } from "../nouns/day";
import { type DateMeaning, type DateOrder, readDate } from "./readDate";
import { settleYears, type Years } from "./settleYears";

/** Why a cell is no date for certain: "order" is "5/7", "year" a year-less day that fits two seasons as well. */
type NoDate = "empty" | "error" | "not-a-date" | "order" | "year";

/** What one cell of a column of dates means. */
export type DateEntry =
  | {
      readonly kind: "date";
      /** Excel's number for the day, without the time of day. */
      readonly serial: number;
      /** A date of the sheet, a text that says it alone, or one that took order or year from the rest of its column. */
      readonly read: "number" | "text" | "order-of-column" | "year-of-column";
    }
  | { readonly kind: "unclear"; readonly why: NoDate; readonly readings: readonly WrittenDay[] };

/** A column of dates as read. */
export interface Dates {
  /** What a cell of the column means; cells that hold the same mean the same. */
  readonly entryOf: (cell: Cell) => DateEntry;
  /** False when no date names its year: the days between dates are right, the year of the serials is a stand-in. */
  readonly yearsKnown: boolean;
}

/**
 * Reads a column of dates (METHODS 3), each different cell once: a season's log repeats few days often.
 *
 * Certain readings are made; "5/7" is read when the rest of the column shows one order of day and month and none the
 * other, else it is unclear, with both readings; a year-less day takes its year from the rest (`settleYears`). An empty
 * cell is unclear: "same as above" is the caller's to say.
 *
 * @param cells in reading order, without the heading
 */
export function readDates(cells: readonly Cell[]): Dates {
  const different = [...new Set(cells)];
  const meanings = different.map(readDate);
  const order = orderOf(meanings);
  const years = settleYears(meanings.flatMap((meaning) => dayIn(meaning, order) ?? []));
  const byCell = new Map(meanings.map((meaning, at) => [different[at] ?? null, settle(meaning, order, years)]));
  const entryOf = (cell: Cell): DateEntry => byCell.get(cell) ?? settle(readDate(cell), order, years);
  return { entryOf, yearsKnown: years.known };
}

/** The order that the column shows; null when it shows none, or both. */
function orderOf(meanings: readonly DateMeaning[]): DateOrder | null {
  const shown = new Set(meanings.flatMap((meaning) => (meaning.means === "day" ? (meaning.order ?? []) : [])));
  const [only] = shown;
  return shown.size === 1 ? (only ?? null) : null;
}

function dayIn(meaning: DateMeaning, order: DateOrder | null): WrittenDay | null {
  if (meaning.means === "day") return meaning.day;
  if (meaning.means === "no-date" || order === null) return null;
  return order === "day-first" ? meaning.dayFirst : meaning.monthFirst;
}

function settle(meaning: DateMeaning, order: DateOrder | null, years: Years): DateEntry {
  if (meaning.means === "no-date") return unclear(meaning.why, []);
  const day = dayIn(meaning, order);
  if (day === null) return unclear("order", meaning.means === "either" ? [meaning.dayFirst, meaning.monthFirst] : []);
  const serial = years.serial(day);
  if (serial === null) return unclear("year", [day]);
  if (meaning.means === "either") return { kind: "date", serial, read: "order-of-column" };
  return { kind: "date", serial, read: day.year === null ? "year-of-column" : meaning.read };
}

function unclear(why: NoDate, readings: readonly WrittenDay[]): DateEntry {
  return { kind: "unclear", why, readings };
}
