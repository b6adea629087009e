import { twoSidedCritical, twoSidedTail } from "../numerics/studentT";

/** A difference between two averages with what chance does to it. Lengths are in the values' unit. */
export interface MeanComparison {
  /** New − usual. */
  readonly difference: number;
  /** The range's two ends, of the confidence asked for. */
  readonly low: number;
  readonly high: number;
  readonly standardError: number;
  readonly t: number;
  /** Degrees of freedom, above 0; a fraction with Welch's method. */
  readonly df: number;
  /** Two-sided, in [0, 1]. */
  readonly pValue: number;
}

/** A difference and how sure it is. */
export interface Gap {
  readonly difference: number;
  /** Above 0. */
  readonly standardError: number;
  readonly df: number;
}

/**
 * The t test of a difference against none, and its range.
 *
 * @param confidence the share of such ranges that would hold the true difference, in (0, 1)
 *
 * Source: "Student" (1908), Biometrika 6, 1–25.
 */
export function meanComparison(gap: Gap, confidence: number): MeanComparison {
  const { difference, standardError, df } = gap;
  const t = difference / standardError;
  const reach = twoSidedCritical(1 - confidence, df) * standardError;
  const [low, high] = [difference - reach, difference + reach];
  return { difference, low, high, standardError, t, df, pValue: twoSidedTail(t, df) };
}

/**
 * Whether a standard error is no more than rounding noise beside the averages it comes from. R's t.test() asks for less
 * than this bound; here the bound itself counts too, so that plants that all bore nothing are found equal.
 */
export function isRoundOff(standardError: number, ...means: readonly number[]): boolean {
  return standardError <= 10 * Number.EPSILON * Math.max(...means.map(Math.abs));
}
