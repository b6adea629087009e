const MONTH =
  "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)";
const DAY = "(?:0?[1-9]|[12][0-9]|3[01])";
const YEAR = "(?:(?:19|20)[0-9]{2}|'[0-9]{2})";
const ORDINAL = `${DAY}(?:st|nd|rd|th)`;
const MONTH_NUMBER = "(?:0?[1-9]|1[0-2])";

/** Ways to write a date in a note, the longest first. A point as mark needs a third part: 1.5 is an amount. */
const DATE = [
  `(?:19|20)[0-9]{2}-${MONTH_NUMBER}-${DAY}`,
  `(?:${ORDINAL}|${DAY}) ?(?:of )?${MONTH}\\b\\.?(?:,? ${YEAR})?`,
  `${MONTH}\\b\\.? (?:${ORDINAL}|${DAY})(?:,? ${YEAR})?`,
  `${MONTH}\\b\\.?(?: ${YEAR})?`,
  `${DAY}[/-]${DAY}[/-](?:(?:19|20)[0-9]{2}|[0-9]{2})`,
  `${DAY}\\.${MONTH_NUMBER}\\.(?:(?:19|20)[0-9]{2}|[0-9]{2})?`,
  `${DAY}/${DAY}`,
  ORDINAL,
].join("|");

const AT_START = new RegExp(`^(?:${DATE})(?![a-z0-9])`);
const ANYWHERE = new RegExp(`(?<![a-z0-9.,/])(?:${DATE})(?![a-z0-9])`, "g");

/**
 * The date that a note starts with, as written ("14 july", "14/7", "2023-07-14"); null when it starts with none.
 *
 * @param note lower-case text with single spaces
 */
export function startsWithDate(note: string): string | null {
  return AT_START.exec(note)?.[0] ?? null;
}

/** A note (lower case, single spaces) without the dates in it, so that digits left over are amounts. */
export function stripDates(note: string): string {
  return note.replace(ANYWHERE, "");
}
