import type { Problem } from "../nouns/problem";
import { type Argument, missing } from "../ranges/option";
import { readNumber } from "../ranges/readNumber";

/** A spreadsheet keeps 15 digits of a number. */
const MOST = 999_999_999_999_999;

/** The number that a draw begins from: any whole number that a cell can hold; null when it is left out. */
export function readDrawNumber(given: Argument): number | null | Problem {
  const number = readNumber(given, "draw_number", OMITTED);
  if (number === OMITTED) return null;
  if (typeof number !== "number") return number;
  return Number.isInteger(number) && Math.abs(number) <= MOST ? number : { problem: "draw-number", given: number };
}

/** Tells an omitted number from every Problem by its identity. */
const OMITTED = missing("draw_number");
