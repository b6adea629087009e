import type { Problem } from "../nouns/problem";
import { isProblem } from "../nouns/problem";
import { cellText } from "./cellText";
import { labelKey } from "./labelKey";
import { type Argument, oneCell } from "./option";

/** What an argument chosen from a list may be. */
export interface ChoiceRule<Choice extends string, Fallback> {
  readonly argument: string;
  readonly allowed: readonly Choice[];
  /** What an omitted argument or an empty cell gives; may be a Problem (`missing`). */
  readonly fallback: Fallback;
}

/** One of the allowed words, whatever its letter case and spaces; else a Problem that lists them. */
export function readChoice<Choice extends string, Fallback>(
  given: Argument,
  rule: ChoiceRule<Choice, Fallback>,
): Choice | Fallback | Problem {
  const { argument, allowed, fallback } = rule;
  const found = oneCell(given, argument);
  if (isProblem(found)) return found;
  if (found.cell === null) return fallback;
  const typed = cellText(found.cell).trim();
  const chosen = allowed.find((choice) => labelKey(choice, "name") === labelKey(typed, "name"));
  return chosen ?? { problem: "unknown-choice", argument, given: typed, allowed };
}
