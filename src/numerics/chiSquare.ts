import { gammaKernel, gammaTails } from "./incompleteGamma";
import { guessChiSquare } from "./jstat";
import { solveInLogs } from "./solveInLogs";

/** P(X < x) for chi-square with df > 0 degrees of freedom, fractions welcome; 0 for x < 0, NaN outside the domain. */
export function lowerTail(x: number, df: number): number {
  return gammaTails(df / 2, Math.max(x, 0) / 2).lower;
}

/** P(X > x) for chi-square; 1 for x < 0. Domain as for lowerTail. */
export function upperTail(x: number, df: number): number {
  return gammaTails(df / 2, Math.max(x, 0) / 2).upper;
}

/**
 * The chi-square value below which the share p lies; 0 at 0, ∞ at 1. NaN for p outside [0, 1] or df not above 0 and
 * finite. Source: jstat's guess, then Newton's method on the smaller tail.
 */
export function quantile(p: number, df: number): number {
  if (!(p >= 0 && p <= 1 && df > 0 && df < Number.POSITIVE_INFINITY)) return Number.NaN;
  if (p === 0) return 0;
  if (p === 1) return Number.POSITIVE_INFINITY;
  const rising = p <= 0.5;
  const wanted = { area: rising ? p : 1 - p, rising };
  return solveInLogs(wanted, guessChiSquare(p, df), (x) => {
    const slope = gammaKernel(df / 2, x / 2);
    const { lower, upper } = gammaTails(df / 2, x / 2);
    return rising ? { area: lower, growth: slope } : { area: upper, growth: -slope };
  });
}
