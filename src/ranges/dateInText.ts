import { isDay, type WrittenDay } from "../nouns/day";
import { ordinaryText } from "./ordinaryText";

/** What a date's text says in each of the two orders of day and month. */
export interface DateText {
  /** The reading with the day first, null where the text rules it out. */
  readonly dayFirst: WrittenDay | null;
  /** The reading with the month first. */
  readonly monthFirst: WrittenDay | null;
  /** True for two bare numbers, where the order is a custom; false where the year comes first or the month is a word. */
  readonly byOrder: boolean;
}

/** Longer texts are notes; this keeps the matching cheap. */
const LONGEST = 40;

const MONTHS = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];

const YEAR = String.raw`(?<year>\d{4}|'?\d{2})`;

/** Each anchored at both ends, with no part that matches one text in two ways. */
const YEAR_FIRST = /^(?<year>\d{4})(?<mark>[-/.])(?<month>\d{1,2})\k<mark>(?<day>\d{1,2})$/;
const COMPACT = /^(?<year>\d{4})(?<month>\d{2})(?<day>\d{2})$/;
const NUMBERS = /^(?<first>\d{1,2})(?<mark>[-/.])(?<second>\d{1,2})(?:\k<mark>(?<year>\d{4}|\d{2}))?(?<end>\.?)$/;
const WORDS = [
  new RegExp(String.raw`^(?<day>\d{1,2})(?<mark>[-/. ]?)(?<word>[a-z]+)\.?(?:\k<mark>${YEAR})?$`),
  new RegExp(String.raw`^(?<day>\d{1,2}) ?(?<word>[a-z]+)\.?[, ]${YEAR}$`),
  /^(?<word>[a-z]+)[. ](?<day>\d{1,2})(?:[, ](?<year>\d{4})|,(?<year2>'?\d{2}))?$/,
  /^(?<year>\d{4})[ -](?<word>[a-z]+)[. -](?<day>\d{1,2})$/,
];

/** Ordinary and full-width digits: most names have none, which spares them the patterns. */
const DIGIT = /[0-9\uFF10-\uFF19]/;

const WEEKDAY = /^(?:mon|tue|tues|wed|wednes|thu|thur|thurs|fri|sat|satur|sun)(?:day)?[., ]+(?=[a-z\d])/;
const TIME = /[t ]\d{1,2}:\d{2}(?::\d{2})?(?:\.\d{1,9})?z?$/;

/**
 * A text as a date, by its pattern: year first ("2023-07-05", "20230705"), two or three numbers with a mark between
 * ("5/7", "5.7.23"), a month by its name ("5 July", "July 5th, 2023", "5-Jul-23"). A weekday before it and a time of
 * day after it are passed over. Years of two digits are 1930 to 2029, as in Excel.
 *
 * @returns null when it has none of these patterns, or names no day of the calendar in any order
 */
export function dateInText(text: string): DateText | null {
  if (text.length > LONGEST || !DIGIT.test(text)) return null;
  const plain = plainDate(text);
  return sure(YEAR_FIRST.exec(plain) ?? COMPACT.exec(plain)) ?? inNumbers(plain) ?? inWords(plain);
}

/** Lower case, single spaces, without weekday, ordinal endings, "of" and "the", and time of day. */
function plainDate(text: string): string {
  return ordinaryText(text)
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase()
    .replace(WEEKDAY, "")
    .replace(TIME, "")
    .replace(/(\d)(?:st|nd|rd|th)\b/g, "$1")
    .replace(/\b(?:of|the) /g, "")
    .replace(/ ?([-/.,]) ?/g, "$1");
}

function sure(match: RegExpExecArray | null): DateText | null {
  if (!match?.groups) return null;
  const { year, month, day } = match.groups;
  const read = existing({ year: yearOf(year), month: Number(month), day: Number(day) });
  return read && { dayFirst: read, monthFirst: read, byOrder: false };
}

/** A point needs a third part or a point at the end: "5.7" is an amount. */
function inNumbers(plain: string): DateText | null {
  const { first, second, mark, year, end } = NUMBERS.exec(plain)?.groups ?? {};
  if (first === undefined || (mark === "." ? year === undefined && end === "" : end !== "")) return null;
  const [one, two] = [Number(first), Number(second)];
  const dayFirst = existing({ year: yearOf(year), month: two, day: one });
  const monthFirst = existing({ year: yearOf(year), month: one, day: two });
  return dayFirst || monthFirst ? { dayFirst, monthFirst, byOrder: true } : null;
}

function inWords(plain: string): DateText | null {
  const match = WORDS.map((pattern) => pattern.exec(plain)).find((found) => found !== null);
  const { day, word = "", year, year2 } = match?.groups ?? {};
  const month = word.length < 3 ? 0 : MONTHS.findIndex((name) => name.startsWith(word)) + 1;
  const read = existing({ year: yearOf(year ?? year2), month, day: Number(day) });
  return read && { dayFirst: read, monthFirst: read, byOrder: false };
}

/** A year from 1930 to 2099; null for none written; NaN for any other. */
function yearOf(written: string | undefined): number | null {
  if (written === undefined) return null;
  const digits = written.replace("'", "");
  const year = digits.length === 2 ? Number(digits) + (Number(digits) < 30 ? 2000 : 1900) : Number(digits);
  return year >= 1930 && year <= 2099 ? year : Number.NaN;
}

/** The day, if the calendar has it. */
function existing(day: WrittenDay): WrittenDay | null {
  return !Number.isNaN(day.year) && isDay(day) ? day : null;
}
