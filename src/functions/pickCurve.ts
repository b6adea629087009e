import { answer } from "./answer";

/**
 * Cumulative yield: the running harvest of each treatment, per plant set out, and the share of the last week.
 * @customfunction PICKCURVE
 * @requiresParameterAddresses
 * @param treatments The treatment of each pick
 * @param dates The date of each pick, as tall as the treatments
 * @param amounts What was picked, as tall as the treatments
 * @param [show] "answer" (the table), "words", "cautions", "Share in last 7 days", or a treatment's name
 * @param [plants_each] Number of plants set out of each, or two columns: treatment, number; totals when left out
 * @param [days] Days from step to step; 7 when left out
 * @param invocation the call's place and its arguments' addresses
 * @returns the table: one row per step
 */
export function pickCurve(
  treatments: any[][],
  dates: any[][],
  amounts: any[][],
  show: any,
  plants_each: any[][],
  days: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("PICKCURVE", [treatments, dates, amounts, show, plants_each, days], invocation);
}
