import { isKnown, type Known, type Limits } from "../nouns/known";
import type { Verdict } from "../nouns/verdict";

/** A comparison's verdict and what it rests on. */
export interface ChangeFound {
  readonly verdict: Verdict;
  readonly change: Known;
  readonly changeRange: Limits;
}

/** The near end of the range lies within this share of the change: the range all but holds no change. */
const NEAR = 1 / 15;
/** A range wider than 100 points. */
const WIDE = 1;

/**
 * Whether a verdict up or down was only just reached. Such a verdict is given where luck helped, so the change found is
 * larger than the true one far more often than not.
 *
 * Source: A. Gelman & J. Carlin (2014), Perspectives on Psychological Science 9, 641–651, on errors of size.
 */
export function isBarelyFound({ verdict, change, changeRange: { low, high } }: ChangeFound): boolean {
  if (!isKnown(change)) return false;
  if (verdict.startsWith("up-")) return isKnown(low) && low < NEAR * change;
  return verdict.startsWith("down-") && isKnown(high) && high > NEAR * change;
}

/** Whether a range of change spans more than 100 points, or has no end. */
export function isWide({ low, high }: Limits): boolean {
  return !isKnown(low) || !isKnown(high) || high - low > WIDE;
}
