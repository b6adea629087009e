import jStat from "jstat";

/**
 * First guesses at quantiles, by jstat. They hold three to eight digits inside the usual range and nothing at its
 * edges (0, 1, infinite or NaN), so every caller polishes them against its own tail: see solveInLogs.ts.
 * This file is the only one that knows jstat.
 */

/** Size of the t that is exceeded, in one direction, with probability upper in (0, 0.5]; df > 0. */
export function guessStudentT(upper: number, df: number): number {
  return Math.abs(jStat.studentt.inv(upper, df));
}

/** Size of the standard normal z that is exceeded with probability upper in (0, 0.5]. */
export function guessNormal(upper: number): number {
  return Math.abs(jStat.normal.inv(upper, 0, 1));
}

/** The chi-square value below which the share p in (0, 1) lies; df > 0. */
export function guessChiSquare(p: number, df: number): number {
  return jStat.chisquare.inv(p, df);
}

/** The Beta(a, b) value below which the share p in (0, 1) lies; a, b > 0. */
export function guessBeta(p: number, a: number, b: number): number {
  return jStat.ibetainv(p, a, b);
}
