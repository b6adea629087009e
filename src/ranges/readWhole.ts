import type { Problem } from "../nouns/problem";
import type { Argument } from "./option";
import { readNumber } from "./readNumber";

/** What a whole number must be. */
export interface WholeRule<Fallback> {
  readonly argument: string;
  readonly low: number;
  /** Null: no upper limit. */
  readonly high: number | null;
  /** What an omitted argument or an empty cell gives; may be a Problem (`missing`). */
  readonly fallback: Fallback;
}

/** One whole number within its limits, else a Problem: readNumber's, or not-whole with the limits. */
export function readWhole<Fallback>(given: Argument, rule: WholeRule<Fallback>): number | Fallback | Problem {
  const { argument, low, high, fallback } = rule;
  const number = readNumber(given, argument, null);
  if (number === null) return fallback;
  if (typeof number !== "number") return number;
  if (Number.isInteger(number) && number >= low && number <= (high ?? Number.MAX_SAFE_INTEGER)) return number;
  return { problem: "not-whole", argument, given: number, low, high };
}
