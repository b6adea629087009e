import { type Cell, isEmpty, isErrorCell } from "../nouns/cell";
import { dayOf, type WrittenDay } from "../nouns/day";
import { dateInText } from "./dateInText";

/** Which of two bare numbers is the day. */
export type DateOrder = "day-first" | "month-first";

/** What one cell says as a date by itself, before the order and the year of its column are known. */
export type DateMeaning =
  /** One day; `order` where it shows the column's order ("24/6"); `year` is null where none is written. */
  | {
      readonly means: "day";
      readonly day: WrittenDay;
      readonly order: DateOrder | null;
      readonly read: "number" | "text";
    }
  /** "5/7": one of two days. */
  | { readonly means: "either"; readonly dayFirst: WrittenDay; readonly monthFirst: WrittenDay }
  | { readonly means: "no-date"; readonly why: "empty" | "error" | "not-a-date" };

/** Excel's numbers for 1 January 1930 and 31 December 2099, the years that a two-digit year may stand for, and on. */
const FIRST = 10_959;
const LAST = 73_050;

/** The first of these days written without marks. */
const FIRST_COMPACT = 19_300_101;

/**
 * Reads one cell as a date (METHODS 3). Certain are Excel's numbers of the years 1930 to 2099, also typed as text
 * ("45112"), ISO dates, months by name, and two numbers of which only one can be the month ("24/6"). Where both can
 * ("5/7") it is one of two days. Anything else is no date: "5.7", "3rd", "w/c 10 July", "July 2023".
 */
export function readDate(cell: Cell): DateMeaning {
  if (isEmpty(cell)) return { means: "no-date", why: "empty" };
  if (typeof cell === "number") return numberDate(cell, "number");
  if (typeof cell === "string") return textDate(cell);
  return { means: "no-date", why: isErrorCell(cell) ? "error" : "not-a-date" };
}

const NO_DATE: DateMeaning = { means: "no-date", why: "not-a-date" };

function numberDate(serial: number, read: "number" | "text"): DateMeaning {
  if (serial >= FIRST && serial < LAST + 1) return { means: "day", day: dayOf(serial), order: null, read };
  const compact = serial >= FIRST_COMPACT ? textDate(String(serial)) : NO_DATE;
  return compact.means === "day" ? { ...compact, read } : NO_DATE;
}

function textDate(text: string): DateMeaning {
  if (/^\s*\d{5}(?:\.\d{1,15})?\s*$/.test(text)) return numberDate(Number(text), "text");
  const found = dateInText(text);
  if (found === null) return NO_DATE;
  const { dayFirst, monthFirst, byOrder } = found;
  const day = dayFirst ?? monthFirst;
  if (day === null) return NO_DATE;
  if (dayFirst && monthFirst && dayFirst.month !== monthFirst.month) return { means: "either", dayFirst, monthFirst };
  return { means: "day", day, order: byOrder ? orderShown(found) : null, read: "text" };
}

/** "24/6" shows the order of its column; "5/5" shows none. */
function orderShown({ dayFirst, monthFirst }: { dayFirst: unknown; monthFirst: unknown }): DateOrder | null {
  if (dayFirst && monthFirst) return null;
  return dayFirst ? "day-first" : "month-first";
}
