import { betaRatioQuantile, smallerShare } from "./betaQuantile";
import { betaTails } from "./incompleteBeta";
import { guessBeta } from "./jstat";

/** The share of a Beta(a, b) variable below x in [0, 1]; a, b > 0; NaN outside the domain. */
export function lowerTail(x: number, a: number, b: number): number {
  return betaTails({ x, y: 1 - x }, { a, b }).lower;
}

/**
 * The Beta(a, b) value below which the share p lies; 0 at 0, 1 at 1; NaN outside the domain.
 * Source: jstat's guess, then Newton's method on the smaller tail.
 */
export function quantile(p: number, a: number, b: number): number {
  if (!(p >= 0 && p <= 1 && a > 0 && b > 0)) return Number.NaN;
  if (p === 0 || p === 1) return p;
  const guess = guessBeta(p, a, b);
  const ratio = betaRatioQuantile(smallerShare(p), { a, b }, guess / (1 - guess));
  return ratio === Number.POSITIVE_INFINITY ? 1 : ratio / (1 + ratio);
}
