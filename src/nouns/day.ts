/** A day as written: the year may be missing ("5 July"). Months and days count from 1. */
export interface WrittenDay {
  readonly year: number | null;
  readonly month: number;
  readonly day: number;
}

/** A day of a known year. */
export interface Day extends WrittenDay {
  readonly year: number;
}

/** Days from 1 March of the year 0 to 30 December 1899, Excel's day 0 for dates after its made-up 29 February 1900. */
const TO_DAY_ZERO = 693_899;

const DAYS_IN_FOUR_CENTURIES = 146_097;

const LENGTHS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether the calendar has such a day; 29 February is one where the year is missing. */
export function isDay({ year, month, day }: WrittenDay): boolean {
  const longest = LENGTHS[month - 1];
  if (longest === undefined || !Number.isInteger(day) || day < 1 || day > longest) return false;
  return month !== 2 || day < 29 || year === null || isLeap(year);
}

/**
 * Excel's number for a day (1900 system), from 1 March 1900 on: 45 112 for 5 July 2023.
 *
 * Days are counted from 1 March, so that a leap day is the last of its year (Gregorian calendar).
 */
export function serialOf({ year, month, day }: Day): number {
  const fromMarch = (month + 9) % 12;
  const years = month < 3 ? year - 1 : year;
  return 365 * years + leapDays(years) + Math.floor((153 * fromMarch + 2) / 5) + day - 1 - TO_DAY_ZERO;
}

/** The day that Excel's number (1900 system, 61 or more) stands for; the time of day is dropped. */
export function dayOf(serial: number): Day {
  const days = Math.floor(serial) + TO_DAY_ZERO;
  const years = wholeYears(days);
  const inYear = days - 365 * years - leapDays(years);
  const fromMarch = Math.floor((5 * inYear + 2) / 153);
  const month = ((fromMarch + 2) % 12) + 1;
  const day = inYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  return { year: month < 3 ? years + 1 : years, month, day };
}

/** Whole years, each from 1 March, in so many days. */
function wholeYears(days: number): number {
  const about = Math.floor((400 * days) / DAYS_IN_FOUR_CENTURIES);
  const nearest = [1, 0, -1].find((more) => 365 * (about + more) + leapDays(about + more) <= days) ?? 0;
  return about + nearest;
}

function leapDays(years: number): number {
  return Math.floor(years / 4) - Math.floor(years / 100) + Math.floor(years / 400);
}

function isLeap(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}
