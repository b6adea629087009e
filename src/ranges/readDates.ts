import type { CellRange } from "../nouns/cellRange";
import type { WrittenDay } from "../nouns/day";
import type { Place } from "../nouns/place";
import { cellsOf, filledLength } from "./cellsOf";
import type { Extent } from "./extent";
import { cellText } from "./option";
import { placeOf } from "./placeOf";
import { type DateMeaning, type DateOrder, readDate } from "./readDate";
import { plainLabel } from "./readLabels";
import { settleYears, type Years } from "./settleYears";
import { whereIs } from "./whereIs";

/** Why a cell is no date for certain: "order" is "5/7", "year" a year-less day that fits two seasons as well. */
export type NoDate = "empty" | "error" | "not-a-date" | "order" | "year";

/** What one cell of a dates range means. `text` is the cell as it stands in the sheet, a date as Excel's number. */
export type DateEntry = { readonly place: Place; readonly text: string } & (
  | {
      readonly kind: "date";
      /** Excel's number for the day, without the time of day. */
      readonly serial: number;
      /** A date of the sheet, a text that says it alone, or one that took order or year from the rest of its column. */
      readonly read: "number" | "text" | "order-of-column" | "year-of-column";
    }
  | { readonly kind: "unclear"; readonly why: NoDate; readonly readings: readonly WrittenDay[] }
);

/** A dates range as read: one entry per cell, row by row, without its heading. */
export interface Dates {
  readonly argument: string;
  /** Where the whole range stands, for sentences. */
  readonly where: string;
  /** The heading in the first cell, if there is one. */
  readonly name: string | null;
  readonly entries: readonly DateEntry[];
  /** False when no date names its year: the days between dates are right, the year of the serials is a stand-in. */
  readonly yearsKnown: boolean;
}

/**
 * Reads a dates range (METHODS 3). Certain readings are made; "5/7" is read when the rest of the column shows one
 * order of day and month and none the other, else it is unclear, with both readings; a year-less day takes its year
 * from the rest (`settleYears`). An empty cell is unclear: "same as above" is the caller's to say.
 *
 * @param extent a heading is taken off only when `extent.heading` says so; see `readLabels`
 */
export function readDates(range: CellRange, extent: Extent = {}): Dates {
  const { length = filledLength(range), heading = false } = extent;
  const from = heading ? 1 : 0;
  const cells = cellsOf(range);
  const given = cells.slice(from, length);
  const { settled, years } = settleDates(given.map(readDate));
  const entries = settled.map((date, at): DateEntry => {
    const where = { place: placeOf(range, from + at), text: cellText(given[at] ?? null).trim() };
    return { ...where, ...date };
  });
  const name = heading ? plainLabel(cells[0] ?? null) : null;
  return { argument: range.argument, where: whereIs(range), name, entries, yearsKnown: years.known };
}

/** A cell's date once its column is known. */
type SettledDate =
  | Pick<Extract<DateEntry, { kind: "date" }>, "kind" | "serial" | "read">
  | Pick<Extract<DateEntry, { kind: "unclear" }>, "kind" | "why" | "readings">;

function settleDates(meanings: readonly DateMeaning[]): { settled: readonly SettledDate[]; years: Years } {
  const order = orderOf(meanings);
  const years = settleYears(meanings.flatMap((meaning) => dayIn(meaning, order) ?? []));
  return { settled: meanings.map((meaning) => settle(meaning, order, years)), years };
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

function settle(meaning: DateMeaning, order: DateOrder | null, years: Years): SettledDate {
  if (meaning.means === "no-date") return { kind: "unclear", why: meaning.why, readings: [] };
  const day = dayIn(meaning, order);
  if (day === null) return unclear("order", meaning.means === "either" ? [meaning.dayFirst, meaning.monthFirst] : []);
  const serial = years.serial(day);
  if (serial === null) return unclear("year", [day]);
  if (meaning.means === "either") return { kind: "date", serial, read: "order-of-column" };
  return { kind: "date", serial, read: day.year === null ? "year-of-column" : meaning.read };
}

function unclear(why: NoDate, readings: readonly WrittenDay[]): SettledDate {
  return { kind: "unclear", why, readings };
}
