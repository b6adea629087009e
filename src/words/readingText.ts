import { dayOf } from "../nouns/day";
import type { Place } from "../nouns/place";
import type { Amount, Reading } from "../nouns/reading";
import { plainNumber } from "./plainNumber";
import { shortLabel } from "./shortLabel";
import { spokenDay } from "./spokenDay";

/** What was made of a cell, in a few words: "0.235kg = 235 g", "5/7: 5 July or 7 May", "bare (1), Bare soil (80)". */
export function readingText(reading: Reading): string {
  const text = shortLabel(reading.text);
  switch (reading.kind) {
    case "unit-converted":
    case "mark-removed":
      return `${text} = ${exactAmount(reading.amount)}`;
    case "unreadable":
      return or(text, meanings(reading));
    case "excel-date":
      return `${text}: ${spokenDay(reading.day)}`;
    case "date-settled":
      return `${text} = ${spokenDay(dayOf(reading.serial))}`;
    case "names-alike":
      return `${text} (${reading.uses}), ${shortLabel(reading.like)} (${reading.likeUses})`;
    case "possible-double":
      return `as row ${sheetRow(reading.like)}`;
    case "not-recorded":
      return { empty: "empty", "empty-row": "empty row", word: text }[reading.why];
    default:
      return text;
  }
}

/** The sheet's row where it is known, else the row within the range. */
export function sheetRow({ cell, row }: Place): number {
  return cell === null ? row : Number(/\d+$/.exec(cell)?.[0] ?? row);
}

function meanings(reading: Extract<Reading, { kind: "unreadable" }>): readonly string[] {
  switch (reading.why) {
    case "doubtful-number":
      return reading.numbers.map((value) => plainNumber(value, 6).replaceAll(" ", ""));
    case "order":
    case "year":
      return reading.days.map(spokenDay);
    default:
      return [];
  }
}

function or(text: string, either: readonly string[]): string {
  return either.length === 0 ? text : `${text}: ${either.join(" or ")}`;
}

/** With plain digits, as it would stand in a cell. */
function exactAmount({ value, unit }: Amount): string {
  const figure = plainNumber(value, 6).replaceAll(" ", "");
  return unit === null || unit === "count" ? figure : `${figure} ${unit}`;
}
