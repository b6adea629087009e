import { twoSidedPower } from "../numerics/noncentralT";
import { twoSidedCritical } from "../numerics/studentT";

/** A trial that is over: how sure its difference is. */
export interface DoneTrial {
  /** Standard error of the difference, in the values' unit. */
  readonly standardError: number;
  readonly df: number;
  readonly confidence: number;
}

/**
 * The chance that a trial as uneven as this one shows a true difference of the given size at all.
 *
 * @param difference in the values' unit
 * @returns in (0, 1)
 *
 * Source: two-sided power of the t test, non-central t.
 */
export function chanceHere(difference: number, { standardError, df, confidence }: DoneTrial): number {
  return twoSidedPower(twoSidedCritical(1 - confidence, df), df, Math.abs(difference) / standardError);
}
