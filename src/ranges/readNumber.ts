import type { Problem } from "../nouns/problem";
import { isProblem } from "../nouns/problem";
import { cellText } from "./cellText";
import { type Argument, oneCell } from "./option";
import { readAmount } from "./readAmount";

/**
 * One number; a text that surely reads as a bare number ("6", "2,5") is that number.
 *
 * @param fallback what an omitted argument or an empty cell gives; may be a Problem (`missing`)
 * @returns a Problem for a block of cells, an error value, TRUE or FALSE, and for any other text
 */
export function readNumber<Fallback>(
  given: Argument,
  argument: string,
  fallback: Fallback,
): number | Fallback | Problem {
  const found = oneCell(given, argument);
  if (isProblem(found)) return found;
  const { cell } = found;
  if (cell === null) return fallback;
  const number = typeof cell === "string" ? bareNumber(cell) : cell;
  if (typeof number === "number" && Number.isFinite(number)) return number;
  return { problem: "not-a-number", argument, given: cellText(cell) };
}

/** The number that a text surely means; null for a doubtful one, one with a unit, and any other text. */
export function bareNumber(text: string): number | null {
  const said = readAmount(text);
  return said.amount === "read" && said.unit === null && !said.doubtful ? said.value : null;
}
