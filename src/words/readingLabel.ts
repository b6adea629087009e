import type { ReadingKind } from "../nouns/reading";

/** LOOKOVER's lines, worst first, by their exact labels (METHODS 8.11); a settled date has no line, as it is certain. */
export const READING_LABELS: Readonly<Record<Exclude<ReadingKind, "date-settled">, string>> = {
  unreadable: "Unreadable",
  "possible-total": "Possible totals or averages",
  "possible-double": "Possible doubles",
  "excel-date": "Looks like a date Excel made",
  "odd-size": "Unusually big or small",
  error: "Errors",
  "not-recorded": "Empty or not recorded",
  "names-alike": "Names nearly alike",
  "name-once": "Names used once",
  lost: "Lost",
  "none-as-zero": "None, read as 0",
  zero: "Zeros",
  "unit-converted": "Units converted",
  "mark-removed": "Marks removed",
};

/** The kinds that have a line, worst first. */
export const LISTED_KINDS = Object.keys(READING_LABELS) as (keyof typeof READING_LABELS)[];

/** The label of the line that counts amounts. */
export const NUMBERS_READ = "Numbers read";
