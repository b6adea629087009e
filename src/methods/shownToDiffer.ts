import { twoSidedTail } from "../numerics/studentT";

/** One of several comparisons made together. */
export interface OneOfSeveral {
  readonly t: number;
  readonly df: number;
  /** How many are made together. */
  readonly comparisons: number;
  /** Its p-value, allowing for all of them. */
  readonly pValue: () => number;
}

/** Well above the rounding of a tail, so that what the bounds decide the p-value would decide too. */
const CLEARLY = 1 + 1e-9;

/**
 * Whether the p-value is below alpha. Student's p of the comparison alone is never more than the joint one, and times
 * the number of comparisons (Bonferroni) never less, so that the costly p-value itself is seldom needed.
 */
export function shownToDiffer({ t, df, comparisons, pValue }: OneOfSeveral, alpha: number): boolean {
  const alone = twoSidedTail(t, df);
  if (alone > CLEARLY * alpha) return false;
  return comparisons * alone * CLEARLY < alpha || pValue() < alpha;
}
