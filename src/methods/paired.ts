import type { Absence } from "../nouns/known";
import { mean, summary } from "../numerics/moments";
import { differences } from "./differences";
import { isRoundOff, type MeanComparison, meanComparison } from "./meanComparison";

/**
 * The paired t comparison: the ith usual and the ith new plant shared a bed, and only their differences count.
 *
 * @param usual and tried: complete pairs, equally many
 * @param confidence of the range, in (0, 1)
 * @returns the average difference new − usual in the values' unit; an Absence for fewer than two pairs or when all
 *   differences are equal, rounding noise aside
 *
 * Source: "Student" (1908), Biometrika 6, 1–25; checked against R's t.test(paired = TRUE).
 */
export function paired(
  usual: readonly number[],
  tried: readonly number[],
  confidence: number,
): MeanComparison | Absence {
  const gaps = summary(differences(usual, tried));
  if (gaps.n < 2) return { absent: "one-plant" };
  const standardError = Math.sqrt(gaps.variance / gaps.n);
  // a difference carries the rounding of the plants it comes from, so theirs is the scale of noise
  if (isRoundOff(standardError, mean(usual), mean(tried))) return { absent: "all-equal" };
  return meanComparison({ difference: gaps.mean, standardError, df: gaps.n - 1 }, confidence);
}
