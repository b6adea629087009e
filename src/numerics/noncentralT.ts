import * as noncentralF from "./noncentralF";
import * as normal from "./normal";
import { scaledChiAverage } from "./scaledChi";

/**
 * P(T > t) for a non-central t: the power of a one-sided t test.
 *
 * @param t any finite number
 * @param df above 0, Infinity included
 * @param ncp non-centrality: true difference over its standard error, any finite number
 * @returns NaN outside the domain
 *
 * Source: the definition T = (Z + ncp)/S, so that P(T > t) is the average of Φ(ncp − t·S) over S: see scaledChi.ts.
 */
export function upperTail(t: number, df: number, ncp: number): number {
  if (!(Number.isFinite(t) && Number.isFinite(ncp) && df > 0)) return Number.NaN;
  const finest = 0.4 / Math.max(1, Math.abs(ncp));
  return Math.min(
    1,
    scaledChiAverage((s) => normal.lowerTail(ncp - t * s), df, finest),
  );
}

/**
 * P(|T| > critical) for a non-central t: the power of a two-sided t test, about 1 µs a call.
 *
 * @param critical 0 or more, usually studentT.twoSidedCritical(alpha, df)
 * @param df above 0, Infinity included
 * @param ncp non-centrality, any finite number; its sign does not matter
 * @returns NaN outside the domain
 *
 * Source: T² is a non-central F with 1 and df degrees of freedom.
 */
export function twoSidedPower(critical: number, df: number, ncp: number): number {
  if (!(critical >= 0)) return Number.NaN;
  if (df !== Number.POSITIVE_INFINITY) return noncentralF.upperTail(critical * critical, [1, df], ncp * ncp);
  return normal.upperTail(critical - ncp) + normal.upperTail(critical + ncp);
}
