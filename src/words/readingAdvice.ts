import type { ReadColumn } from "../nouns/findings/lookedOver";
import type { OddBecause, Remark, TotalRow } from "../nouns/reading";
import { sheetRow } from "./readingText";

/**
 * What to do about a cell of which something was made, in short sentences.
 *
 * @param kind what its column was read as
 */
export function readingAdvice(remark: Remark, kind: ReadColumn["kind"]): string {
  switch (remark.kind) {
    case "unreadable":
      return unreadable[remark.why];
    case "possible-total":
      return totals[remark.row];
    case "possible-double":
      return `All as in row ${sheetRow(remark.like)}. If it was entered twice, take one out.`;
    case "odd-size":
      return odd[remark.because];
    case "not-recorded":
      return remark.why === "empty" ? empty[kind] : recorded[remark.why];
    case "names-alike":
      return remark.same
        ? "Read as one name. Spell it one way."
        : "Read as two names. If they mean one thing, spell them one way.";
    default:
      return others[remark.kind];
  }
}

const unreadable: Readonly<Record<Extract<Remark, { kind: "unreadable" }>["why"], string>> = {
  text: "Type the number alone. Put the note in a column of its own.",
  "unit-unclear": "The unit is not clear. Name one unit in the heading, and type numbers alone.",
  "true-or-false": "Type a number instead.",
  "not-a-date": "Type the date as year, month, day, such as 2023-07-05.",
  "doubtful-number": "Type it without the comma or the dot that could mean either.",
  order: "Type it as year, month, day, such as 2023-07-05.",
  year: "Type it with its year, such as 2023-07-05.",
};

const totals: Readonly<Record<TotalRow, string>> = {
  label: "A row of totals or averages is left out. Keep it out of the list.",
  "no-label": "No name stands beside it, so it is left out. Give its name, or take it out.",
  total: "It is the sum of the cells above. If it is their total, take it out.",
  average: "It is the average of the cells above. If it was worked out, take it out.",
  "equals-average": "It equals the average of the cells above. If it was worked out, take it out.",
};

const odd: Readonly<Record<OddBecause, string>> = {
  far: "Far from the rest. Check for a typing slip. Keep it if it is real.",
  "beyond-limits": "Beyond the limits you set. Check it. Keep it if it is real.",
  "below-zero": "A harvest cannot be below zero. Check it.",
  huge: "Over a thousand million. Check for digits too many.",
};

const empty: Readonly<Record<ReadColumn["kind"], string>> = {
  amount: "If nothing was ripe, type 0. If it was not weighed, type “not weighed”. If the plant is gone, type “lost”.",
  date: "Type the date. An empty cell is not read as the day above.",
  label: "Type the name. An empty cell is not read as the name above.",
};

const recorded = {
  "empty-row": "An empty row is passed over.",
  word: "Not counted, and not read as 0. Type the number if you know it.",
} as const;

const others = {
  "excel-date": "This is a date. If it should not be one, type again what you meant.",
  error: "Mend the formula, or type what should stand here.",
  "name-once": "Used once. Check how it is spelled.",
  lost: "Read as a lost plant.",
  "none-as-zero": "Read as 0.",
  zero: "Read as 0: nothing was borne.",
  "unit-converted": "Read as a number. A unit belongs in the heading.",
  "mark-removed": "Read as a number. A mark belongs in a column of notes.",
  "date-settled": "Read as a date, as the other dates are written.",
} as const;
