import type { Problem } from "../nouns/problem";
import { isProblem } from "../nouns/problem";
import { cellText } from "./cellText";
import { FRACTION_RULES, type FractionName } from "./fractionRules";
import { type Argument, oneCell } from "./option";
import { bareNumber } from "./readNumber";
import { readPercent } from "./readPercent";

/**
 * A percent as a fraction, each argument by its own rule (METHODS 4.4).
 *
 * The texts "30%", "30 %" and "30,5 %" are read; a bare text is read as its number, so "0.3" is 30 % and "30" is
 * refused like the number 30.
 *
 * @param fallback what an omitted argument or an empty cell gives; may be a Problem (`missing`)
 */
export function readFraction<Fallback>(
  given: Argument,
  argument: FractionName,
  fallback: Fallback,
): number | Fallback | Problem {
  const found = oneCell(given, argument);
  if (isProblem(found)) return found;
  const { cell } = found;
  if (cell === null) return fallback;
  const percent = typeof cell === "string" ? readPercent(cell) : null;
  const value = percent ?? (typeof cell === "string" ? bareNumber(cell) : cell);
  if (typeof value !== "number" || !Number.isFinite(value)) {
    return { problem: "not-a-number", argument, given: cellText(cell) };
  }
  return FRACTION_RULES[argument]({ argument, value, signed: percent !== null }) ?? value;
}
