import { type Day, dayOf, isDay, serialOf, type WrittenDay } from "../nouns/day";

/** How the year-less days of a column get their years. */
export interface Years {
  /** Excel's number for a day; null for a year-less one when nobody knows which year it belongs to. */
  readonly serial: (day: WrittenDay) => number | null;
  /** False when no day names its year: then only the days between two dates mean something. */
  readonly known: boolean;
}

/** Stand-ins where no year is named, so that 29 February exists where it is needed and nowhere else. */
const STAND_IN = 2001;
const LEAP_STAND_IN = 2004;

/**
 * Which years the year-less days of a column belong to. Our own rule, as no source rules it:
 *
 * - Beside days with a year, the year that brings them nearest to those; none where two years fit as well.
 * - Where no day has a year, one season of one year that does not matter. It runs over New Year when the days are not
 *   in rising order and the widest gap between them lies inside the year (November, December, January).
 *
 * @param days the days of a column in reading order
 */
export function settleYears(days: readonly WrittenDay[]): Years {
  const dated = days.filter(hasYear).map(serialOf);
  if (dated.length === 0) return standIn(days);
  const [low, high] = [dated.reduce(least), dated.reduce(most)];
  const [from, to] = [dayOf(low).year - 1, dayOf(high).year + 1];
  const years = Array.from({ length: to - from + 1 }, (_, at) => from + at);
  return { serial: (day) => (hasYear(day) ? serialOf(day) : nearest(day, years, { low, high })), known: true };
}

function hasYear(day: WrittenDay): day is Day {
  return day.year !== null;
}

function nearest(
  day: WrittenDay,
  years: readonly number[],
  { low, high }: { readonly low: number; readonly high: number },
): number | null {
  const serials = years
    .map((year) => ({ ...day, year }))
    .filter(isDay)
    .map(serialOf);
  const distances = serials.map((serial) => Math.max(low - serial, serial - high, 0));
  const shortest = distances.reduce(least, Number.POSITIVE_INFINITY);
  const only = distances.filter((distance) => distance === shortest).length === 1;
  return only ? (serials[distances.indexOf(shortest)] ?? null) : null;
}

function standIn(days: readonly WrittenDay[]): Years {
  const firstOfSeason = seasonStart(days.map(inYear));
  const yearsOff = (day: WrittenDay): number => (firstOfSeason > 0 && inYear(day) >= firstOfSeason ? -1 : 0);
  const leapDay = days.find(({ month, day }) => month === 2 && day === 29);
  const year = leapDay === undefined ? STAND_IN : LEAP_STAND_IN - yearsOff(leapDay);
  return { serial: (day) => serialOf({ ...day, year: year + yearsOff(day) }), known: false };
}

/** Where a season that runs over New Year starts; 0 for one that does not. */
function seasonStart(inOrder: readonly number[]): number {
  const rising = inOrder.every((day, at) => day >= (inOrder[at - 1] ?? 0));
  const sorted = [...new Set(inOrder)].sort((first, second) => first - second);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (rising || first === undefined || last === undefined) return 0;
  const overNewYear = first + inYear({ year: null, month: 13, day: 0 }) - last;
  const gaps = sorted.map((day, at) => day - (sorted[at - 1] ?? day));
  const widest = gaps.reduce(most, 0);
  return widest > overNewYear ? (sorted[gaps.indexOf(widest)] ?? 0) : 0;
}

/** A place in the year that rises with the day; months count 31 days. */
function inYear({ month, day }: WrittenDay): number {
  return 31 * (month - 1) + day;
}

function least(one: number, other: number): number {
  return Math.min(one, other);
}

function most(one: number, other: number): number {
  return Math.max(one, other);
}
