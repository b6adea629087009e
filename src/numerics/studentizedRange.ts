import * as normal from "./normal";
import { normalAverage, stepFor } from "./normalAverage";
import { remembered } from "./remembered";
import { falsePosition } from "./root";
import { scaledChiAverage } from "./scaledChi";
import { twoSidedCritical, twoSidedTail } from "./studentT";

/**
 * P(Q > q) for the studentized range of k averages: the p-value of a Tukey comparison. A few milliseconds a call.
 *
 * @param q any number; 1 for q ≤ 0
 * @param k whole, 2 or more
 * @param df above 0, fractions welcome, Infinity included
 * @returns NaN outside the domain
 *
 * Source: H. O. Hartley (1942), Biometrika 32, 309–310; Copenhaver & Holland (1988), Journal of Statistical Computation
 * and Simulation 30, 1–15; the average over the estimated spread by scaledChi.ts. Written for the upper tail throughout, so that
 * small p-values keep their relative accuracy.
 */
export function upperTail(q: number, k: number, df: number): number {
  if (Number.isNaN(q) || !(Number.isInteger(k) && k >= 2 && df > 0)) return Number.NaN;
  if (q <= 0) return 1;
  if (q === Number.POSITIVE_INFINITY) return 0;
  if (k === 2) return twoSidedTail(q / Math.SQRT2, df);
  return Math.min(
    1,
    scaledChiAverage((s) => rangeExceeds(q * s, k), df),
  );
}

/**
 * The q that the studentized range of k averages exceeds with probability alpha. Remembered by (alpha, k, df).
 *
 * @param alpha upper-tail probability in (0, 1), such as 0.05; k and df as for upperTail
 * @returns NaN outside the domain
 */
export const quantile: (alpha: number, k: number, df: number) => number = remembered((alpha, k, df) => {
  if (!(alpha > 0 && alpha < 1 && Number.isInteger(k) && k >= 2 && df > 0)) return Number.NaN;
  // one comparison is too lenient, Bonferroni's share for each pair too strict
  const low = Math.SQRT2 * twoSidedCritical(alpha, df);
  if (k === 2) return low;
  const high = Math.SQRT2 * twoSidedCritical(alpha / ((k * (k - 1)) / 2), df);
  const excess = (logQ: number) => Math.log(upperTail(Math.exp(logQ), k, df) / alpha);
  return Math.exp(falsePosition(excess, Math.log(low), Math.log(high), 1e-13));
});

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
