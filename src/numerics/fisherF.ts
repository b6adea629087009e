import { betaRatioQuantile, smallerShare } from "./betaQuantile";
import * as chiSquare from "./chiSquare";
import { betaTails } from "./incompleteBeta";
import { guessBeta } from "./jstat";

/**
 * P(F > f) for Fisher's F.
 *
 * @param f any number; 1 for f < 0
 * @param d1 degrees of freedom above the line, above 0 and finite
 * @param d2 degrees of freedom below the line, above 0, Infinity included
 * @returns NaN outside the domain
 *
 * Source: I_x(d2/2, d1/2) at x = d2/(d2 + d1·f), DLMF 8.17(i).
 */
export function upperTail(f: number, d1: number, d2: number): number {
  if (!(d1 > 0 && d1 < Number.POSITIVE_INFINITY && d2 > 0)) return Number.NaN;
  if (d2 === Number.POSITIVE_INFINITY) return chiSquare.upperTail(d1 * f, d1);
  const above = d1 * Math.max(f, 0);
  if (above === Number.POSITIVE_INFINITY) return 0;
  return betaTails({ x: d2 / (d2 + above), y: above / (d2 + above) }, { a: d2 / 2, b: d1 / 2 }).lower;
}

/** The F below which the share p lies; 0 at 0, ∞ at 1. NaN outside the domain of upperTail or for p outside [0, 1]. */
export function quantile(p: number, d1: number, d2: number): number {
  if (!(p >= 0 && p <= 1 && d1 > 0 && d1 < Number.POSITIVE_INFINITY && d2 > 0)) return Number.NaN;
  if (p === 0) return 0;
  if (p === 1) return Number.POSITIVE_INFINITY;
  if (d2 === Number.POSITIVE_INFINITY) return chiSquare.quantile(p, d1) / d1;
  const guess = guessBeta(p, d1 / 2, d2 / 2);
  return (betaRatioQuantile(smallerShare(p), { a: d1 / 2, b: d2 / 2 }, guess / (1 - guess)) * d2) / d1;
}
