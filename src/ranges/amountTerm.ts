import type { AmountToken } from "./amountTokens";
import { FRACTIONS } from "./ordinaryText";
import { type Unit, unitOf } from "./unit";

/** One number of an amount's text with its unit. */
export interface AmountTerm {
  /** The digits as typed, "" for a fraction alone. */
  readonly digits: string;
  /** The fraction beside the digits, 0 for none. */
  readonly fraction: number;
  readonly negative: boolean;
  readonly unit: Unit | null;
  /** True for the smaller part of a compound: "4 oz" in "1 lb 4 oz". */
  readonly compound: boolean;
  /** The token after the term. */
  readonly end: number;
}

/** Digits and fraction, before the unit is looked at. */
interface Quantity {
  readonly digits: string;
  readonly fraction: number;
  /** True for a fraction with a slash alone ("1/2"), which without a unit may be a date or a score. */
  readonly slashOnly: boolean;
  readonly end: number;
}

/** Denominators that growers use; 2/9 is a date. */
const DENOMINATORS = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16]);

/** The term that starts at a token; null when none does. */
export function readTerm(tokens: readonly AmountToken[], from: number): AmountTerm | null {
  const negative = tokens[from]?.text === "-" && tokens[from + 1]?.spaced === false;
  const quantity = readQuantity(tokens, from + (negative ? 1 : 0));
  if (quantity === null) return null;
  const word = tokens[quantity.end];
  const unit = word ? unitOf(word.text) : null;
  if (quantity.slashOnly && unit === null) return null;
  const { digits, fraction, end } = quantity;
  return { digits, fraction, negative, unit, compound: false, end: unit === null ? end : end + 1 };
}

function readQuantity(tokens: readonly AmountToken[], at: number): Quantity | null {
  const [first, second] = [tokens[at], tokens[at + 1]];
  if (first?.token === "fraction") return withFraction("", FRACTIONS[first.text], at + 1);
  if (first?.token !== "number") return null;
  const slash = slashFraction(tokens, at);
  if (slash !== null) return { ...withFraction("", slash, at + 3), slashOnly: true };
  if (!isWhole(first)) return withFraction(first.text, 0, at + 1);
  if (second?.token === "fraction") return withFraction(first.text, FRACTIONS[second.text], at + 2);
  const mixed = slashFraction(tokens, at + 1);
  return mixed === null ? withFraction(first.text, 0, at + 1) : withFraction(first.text, mixed, at + 4);
}

function withFraction(digits: string, fraction: number | undefined, end: number): Quantity {
  return { digits, fraction: fraction ?? 0, slashOnly: false, end };
}

/** "1/2" as 0.5; null for anything that is no part of a whole. */
function slashFraction(tokens: readonly AmountToken[], at: number): number | null {
  const [top, slash, bottom] = tokens.slice(at, at + 3);
  if (slash?.text !== "/" || !top || !bottom || !isWhole(top) || !isWhole(bottom)) return null;
  const [above, below] = [Number(top.text), Number(bottom.text)];
  return above > 0 && above < below && DENOMINATORS.has(below) ? above / below : null;
}

function isWhole({ token, text }: AmountToken): boolean {
  return token === "number" && /^\d+$/.test(text);
}
