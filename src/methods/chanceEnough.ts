import type { Known } from "../nouns/known";
import { upperTail } from "../numerics/noncentralT";
import { type Plan, plannedTest } from "./power";

/** A true change and the smallest one worth acting on, both fractions. */
export interface HopedFor {
  /** Above −1. */
  readonly change: number;
  /** A size: 0 or more, and below 1 when the change is a fall. */
  readonly worthwhile: number;
}

/**
 * The chance that a true change comes out as enough to matter: the whole range at or beyond the worthwhile change, on
 * the side of the true change.
 *
 * @param plantsEach whole, 2 or more: plants of each treatment that live to the end
 * @returns in [0, 1]; an Absence when beds and treatments use up all degrees of freedom
 *
 * Source: the ratio test of percentRange.ts at r = 1 ± worthwhile, as a non-central t.
 */
export function chanceEnough({ change, worthwhile }: HopedFor, plantsEach: number, plan: Plan): Known {
  const test = plannedTest(plantsEach, plan);
  if (test === null) return { absent: "no-degrees-of-freedom" };
  const sign = change < 0 ? -1 : 1;
  const ratio = 1 + change;
  const bar = 1 + sign * worthwhile;
  const standardError = plan.unevenness * Math.sqrt((ratio ** 2 + bar ** 2) / plantsEach);
  return upperTail(test.critical, test.df, (sign * (ratio - bar)) / standardError);
}
