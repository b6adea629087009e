import * as normal from "./normal";
import { normalAverage, stepFor } from "./normalAverage";
import { type Studentized, studentized } from "./studentized";
import { twoSidedCritical, twoSidedTail } from "./studentT";

/**
 * The distribution of the studentized range of k averages: tail(q, df) is the p-value of a Tukey comparison,
 * critical(alpha, df) the quantile of its ranges. The first answer takes a fraction of a millisecond, further ones of
 * the same k, whatever their df, much less.
 *
 * @param k whole, 2 or more; otherwise all answers are NaN
 *
 * Source: H. O. Hartley (1942), Biometrika 32, 309–310; Copenhaver & Holland (1988), Journal of Statistical Computation
 * and Simulation 30, 1–15. Written for the upper tail throughout, so that small p-values keep their relative accuracy.
 */
export function studentizedRange(k: number): Studentized {
  if (!(Number.isInteger(k) && k >= 2)) return { tail: () => Number.NaN, critical: () => Number.NaN };
  return k === 2 ? twoAverages : studentized({ exceeds: (w) => rangeExceeds(w, k), guess: asIfIndependent(k) });
}

/** The range of two averages is a t test's difference, √2 times as long. */
const twoAverages: Studentized = {
  tail: (q, df) => (q <= 0 && df > 0 ? 1 : twoSidedTail(q / Math.SQRT2, df)),
  critical: (alpha, df) => (alpha > 0 && alpha < 1 ? Math.SQRT2 * twoSidedCritical(alpha, df) : Number.NaN),
};

/** A little too strict: the pairs are not independent. */
function asIfIndependent(k: number): (alpha: number, df: number) => number {
  const pairs = (k * (k - 1)) / 2;
  return (alpha, df) => Math.SQRT2 * twoSidedCritical(-Math.expm1(Math.log1p(-alpha) / pairs), df);
}

/**
 * P(range of k standard normal values > w) = k ∫ φ(z) [Φ(z)^(k−1) − (Φ(z) − Φ(z − w))^(k−1)] dz, z being the largest.
 */
function rangeExceeds(w: number, k: number): number {
  if (w > 75) return 0;
  const stretch = { from: -8.5, to: w / 2 + 8.5, step: stepFor(k - 1) };
  const outside = (z: number) => {
    const below = normal.lowerTail(z);
    const gap = normal.lowerTail(z - w) / below;
    return -(below ** (k - 1)) * Math.expm1((k - 1) * Math.log1p(-gap));
  };
  return k * normalAverage(outside, stretch);
}
