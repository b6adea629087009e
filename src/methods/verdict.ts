import { type Absence, isKnown, type Known } from "../nouns/known";
import type { RangeVerdict, Verdict } from "../nouns/verdict";

/**
 * What a range of percent change says about a worthwhile change. The ten answers leave no gap and never overlap.
 *
 * @param low and high: fractions; a missing low end counts as −∞, a missing high end as +∞
 * @param worthwhile the smallest change worth acting on, as a fraction above 0
 */
export function rangeVerdict(low: Known, high: Known, worthwhile: number): RangeVerdict {
  const bottom = isKnown(low) ? low : Number.NEGATIVE_INFINITY;
  const top = isKnown(high) ? high : Number.POSITIVE_INFINITY;
  if (bottom > 0) return DIRECTED.up[size(bottom, top, worthwhile)];
  if (top < 0) return DIRECTED.down[size(-top, -bottom, worthwhile)];
  const gainPossible = top >= worthwhile;
  const lossPossible = bottom <= -worthwhile;
  if (gainPossible && lossPossible) return "open";
  if (gainPossible) return "open-up";
  return lossPossible ? "open-down" : "level";
}

/** How much a change is, between two sizes above 0. */
function size(least: number, most: number, worthwhile: number): "enough" | "small" | "unclear" {
  if (least >= worthwhile) return "enough";
  return most < worthwhile ? "small" : "unclear";
}

const DIRECTED = {
  up: { enough: "up-enough", small: "up-small", unclear: "up-unclear" },
  down: { enough: "down-enough", small: "down-small", unclear: "down-unclear" },
} as const;

/** How many plants a verdict rests on: separate ones of each treatment, or complete pairs. */
export type VerdictBasis = { readonly usual: number; readonly tried: number } | { readonly pairs: number };

/**
 * The verdict after the caps for few plants: too few to say anything, or a direction as a hint at most.
 *
 * Two plants against two, or one against any number, are too few, as are three pairs; under four plants in a treatment,
 * and four or five pairs, only lean.
 *
 * @param range the range's verdict, or why there is no range: one plant is too few, anything else no answer
 */
export function cappedVerdict(range: RangeVerdict | Absence, basis: VerdictBasis): Verdict {
  if (typeof range === "object") return range.absent === "one-plant" ? "few" : "none";
  if (isTooFew(basis)) return "few";
  if (!isHintOnly(basis)) return range;
  if (range.startsWith("up-")) return "leaning-up";
  return range.startsWith("down-") ? "leaning-down" : range;
}

function isTooFew(basis: VerdictBasis): boolean {
  if ("pairs" in basis) return basis.pairs <= 3;
  return Math.min(basis.usual, basis.tried) < 2 || Math.max(basis.usual, basis.tried) <= 2;
}

/** Whether so few plants allow a hint at most, or nothing. */
export function isHintOnly(basis: VerdictBasis): boolean {
  return "pairs" in basis ? basis.pairs <= 5 : Math.min(basis.usual, basis.tried) < 4;
}
