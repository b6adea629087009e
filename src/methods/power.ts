import type { PlanBasis } from "../nouns/findings/planning";
import type { Known } from "../nouns/known";
import { twoSidedPower } from "../numerics/noncentralT";
import { twoSidedCritical } from "../numerics/studentT";
import { ALPHA } from "./alpha";

/** The trial's layout and how uneven its plants are (within a bed, where there are beds). */
export type Plan = Pick<PlanBasis, "unevenness" | "treatments" | "beds">;

/** The t test that a plan ends in. */
export interface PlannedTest {
  /** Two-sided share of false alarms allowed to one comparison with the usual. */
  readonly alpha: number;
  readonly df: number;
  /** A difference beyond this many standard errors counts as shown. */
  readonly critical: number;
}

/** The test for so many plants of each treatment that live to the end; null when no degree of freedom is left. */
export function plannedTest(plantsEach: number, { treatments, beds }: Plan): PlannedTest | null {
  const alpha = ALPHA / (treatments - 1);
  const blocks = beds === "one each" ? plantsEach : (beds ?? 1);
  const df = treatments * plantsEach - blocks - treatments + 1;
  return df < 1 ? null : { alpha, df, critical: twoSidedCritical(alpha, df) };
}

/**
 * The chance that a true change is shown at all: two-sided power of the t test of one treatment against the usual, when
 * the spread grows with the yield (the same unevenness in both).
 *
 * @param change a fraction above −1; 0 gives the share of false alarms
 * @param plantsEach whole, 2 or more: plants of each treatment that live to the end
 * @returns in [0, 1]; an Absence when beds and treatments use up all degrees of freedom
 *
 * Source: non-central t; ncp = |p|/(σ√(2/n)), σ² = c²(1 + (1 + p)²)/2; van Belle & Millard, STRUTS, chapter 2, for the
 * spread that grows; α shared among comparisons by Bonferroni's rule.
 */
export function power(change: number, plantsEach: number, plan: Plan): Known {
  const test = plannedTest(plantsEach, plan);
  if (test === null) return { absent: "no-degrees-of-freedom" };
  return change === 0 ? test.alpha : powerOf(test, noncentrality(change, plantsEach, plan.unevenness));
}

/** The chance that the planned test shows a difference of so many standard errors. */
export function powerOf(test: PlannedTest, standardErrors: number): number {
  return twoSidedPower(test.critical, test.df, standardErrors);
}

/** A true change in standard errors of the difference, 0 or more. */
export function noncentrality(change: number, plantsEach: number, unevenness: number): number {
  return Math.abs(change) / (unevenness * Math.sqrt((1 + (1 + change) ** 2) / plantsEach));
}
