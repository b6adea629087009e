import type { NotPlain } from "../nouns/problem";
import { plainNumber } from "./plainNumber";
import { shortLabel } from "./shortLabel";
import { spokenDay } from "./spokenDay";

/** Why one cell cannot be read as a number (METHODS 3 and 8.12). */
export function notPlainSentence(given: string, because: NotPlain): string {
  switch (because.why) {
    case "unreadable":
      return `Can't read “${shortLabel(given)}”.`;
    case "doubtful":
      return doubtful(given, because.numbers);
    case "wrong-unit":
      return `“${shortLabel(given)}” cannot be turned into ${unitName(because.unit)}.`;
    case "excel-date":
      return `“${given}” looks like ${spokenDay(because.day)}, a date Excel made. Type the amount again.`;
  }
}

/** How a unit is spoken of; "count" is a number of fruit. */
export function unitName(unit: string): string {
  return unit === "count" ? "a count" : unit;
}

/** Numbers are told with plain digits, so that they differ at sight from what was typed. */
function doubtful(given: string, [taken, other]: readonly [number, number]): string {
  const [one, two] = [taken, other].map((value) => plainNumber(value, 6).replaceAll(" ", ""));
  return `Can't tell whether “${shortLabel(given)}” is ${one} or ${two}.`;
}
