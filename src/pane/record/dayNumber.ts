import { dayOf } from "../../nouns/day";

/** The first of January 1970 in a spreadsheet's day numbers. */
const start = 25_569;
const day = 86_400_000;

/** A day written as in a date field ("2026-08-30") as the spreadsheet's day number; null when it is none. */
export function dayNumber(written: string): number | null {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(written) ? Date.parse(`${written}T00:00:00Z`) : Number.NaN;
  // Some browsers read 31 February as a day in March.
  const isDay = !Number.isNaN(time) && new Date(time).toISOString().startsWith(written);
  return isDay ? start + time / day : null;
}

/** The spreadsheet's day number as a date field has it: "2026-08-30". */
export function dateText(serial: number): string {
  const { year, month, day: date } = dayOf(serial);
  return [String(year).padStart(4, "0"), ...[month, date].map((part) => String(part).padStart(2, "0"))].join("-");
}

/** Today on the grower's own calendar. */
export function today(now: Date): number {
  return start + Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / day;
}
