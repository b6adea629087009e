import jStat from "jstat";

/**
 * First guesses at quantiles, by jstat's inverse special functions. They hold three to eight digits inside the usual
 * range and nothing at its edges (0, 1, infinite or NaN), so every caller polishes them against its own tail: see
 * solveInLogs.ts.
 * This file is the only one that knows jstat.
 */

/** Size of the t that is exceeded, in one direction, with probability upper in (0, 0.5]; df > 0. */
export function guessStudentT(upper: number, df: number): number {
  const x = jStat.ibetainv(2 * upper, df / 2, 0.5);
  return Math.sqrt((df * (1 - x)) / x);
}

/** Size of the standard normal z that is exceeded with probability upper in (0, 0.5]. */
export function guessNormal(upper: number): number {
  return Math.SQRT2 * Math.abs(jStat.erfcinv(2 * upper));
}

/** The chi-square value below which the share p in (0, 1) lies; df > 0. */
export function guessChiSquare(p: number, df: number): number {
  return 2 * jStat.gammapinv(p, df / 2);
}

/** The Beta(a, b) value below which the share p in (0, 1) lies; a, b > 0. */
export function guessBeta(p: number, a: number, b: number): number {
  return jStat.ibetainv(p, a, b);
}
