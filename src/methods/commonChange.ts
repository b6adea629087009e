import type { Absence } from "../nouns/known";
import { summary } from "../numerics/moments";
import { isRoundOff, meanComparison } from "./meanComparison";

/** One change that several trials share, as fractions: 0.2 is 20 % more. */
export interface CommonChange {
  readonly change: number;
  readonly range: { readonly low: number; readonly high: number };
}

/**
 * The change common to several trials, each one row: the t range of the ratios' logarithms, turned back. How much the
 * trials differ among themselves is all that tells how far luck reaches.
 *
 * @param ratios new average over usual average, each above 0; one or more
 * @param confidence of the range, in (0, 1)
 * @returns the range is an Absence for one trial, and for trials that all give the very same ratio
 *
 * Source: the t range of "Student" (1908) on a log scale; checked against R's t.test().
 */
export function commonChange(
  ratios: readonly number[],
  confidence: number,
): Pick<CommonChange, "change"> & { readonly range: CommonChange["range"] | Absence } {
  const { n, mean, variance } = summary(ratios.map(Math.log));
  const change = Math.expm1(mean);
  if (n < 2) return { change, range: { absent: "one-trial" } };
  const standardError = Math.sqrt(variance / n);
  // A ratio is known to about one part in 2^52, so its log to that much, however near to 0 the average is.
  if (isRoundOff(standardError, mean, 1)) return { change, range: { absent: "all-equal" } };
  const { low, high } = meanComparison({ difference: mean, standardError, df: n - 1 }, confidence);
  return { change, range: { low: Math.expm1(low), high: Math.expm1(high) } };
}
