import { betaRatioQuantile, type KnownShare } from "./betaQuantile";
import { betaTails } from "./incompleteBeta";
import { guessStudentT } from "./jstat";
import { nearNormal } from "./nearNormal";
import * as normal from "./normal";

/** From here on the series in 1/df holds six digits at the usual alphas, and takes a third of the time of jstat's guess. */
const MANY = 20;

/**
 * P(T > t) for Student's t with df degrees of freedom.
 *
 * @param t any number, −∞ and ∞ included; beyond 1e154 the tail counts as 0
 * @param df above 0, fractions welcome; Infinity is the normal distribution
 * @returns NaN for NaN or df ≤ 0
 */
export function upperTail(t: number, df: number): number {
  const half = twoSidedTail(t, df) / 2;
  return t >= 0 ? half : 1 - half;
}

/**
 * P(|T| ≥ |t|) for Student's t, in [0, 1]: the two-sided p-value. Domain as for upperTail.
 *
 * Source: DLMF 8.17(i) with x = df/(df + t²): the tail is I_x(df/2, ½), small where x is small, so nothing cancels.
 */
export function twoSidedTail(t: number, df: number): number {
  if (!(df > 0)) return Number.NaN;
  if (df === Number.POSITIVE_INFINITY) return Math.min(1, 2 * normal.upperTail(Math.abs(t)));
  const square = t * t;
  if (square === Number.POSITIVE_INFINITY) return 0;
  return betaTails({ x: df / (df + square), y: square / (df + square) }, { a: df / 2, b: 0.5 }).lower;
}

/**
 * The t > 0 that |T| exceeds with probability alpha: the multiplier of a standard error in a range of
 * confidence 1 − alpha.
 *
 * @param alpha in (0, 1); 0 gives ∞, 1 gives 0
 * @param df above 0, Infinity included
 * @returns NaN outside the domain
 *
 * Source: a guess, by jstat or for many degrees of freedom from the normal distribution, then Halley's method on the
 * tail.
 */
export function twoSidedCritical(alpha: number, df: number): number {
  if (!(alpha >= 0 && alpha <= 1 && df > 0)) return Number.NaN;
  if (alpha === 0) return Number.POSITIVE_INFINITY;
  if (alpha === 1) return 0;
  if (df === Number.POSITIVE_INFINITY) return -normal.quantile(alpha / 2);
  const guess = (df < MANY ? guessStudentT(alpha / 2, df) : nearNormal(-normal.nearQuantile(alpha / 2), df)) ** 2 / df;
  const known: KnownShare = alpha <= 0.5 ? { side: "upper", share: alpha } : { side: "lower", share: 1 - alpha };
  return Math.sqrt(df * betaRatioQuantile(known, { a: 0.5, b: df / 2 }, guess));
}

/** The t below which the share p lies; −∞ at 0, ∞ at 1. NaN for p outside [0, 1] or df ≤ 0. */
export function quantile(p: number, df: number): number {
  if (p < 0.5) return -twoSidedCritical(2 * p, df);
  return twoSidedCritical(2 * (1 - p), df);
}
