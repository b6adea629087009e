import { answer } from "./answer";

/**
 * Earliness: the day by which half of each plant's own harvest was in.
 * @customfunction HALFPICKED
 * @requiresParameterAddresses
 * @param plants The plant of each pick
 * @param dates The date of each pick, as tall as the plants
 * @param amounts What was picked, as tall as the plants; "lost" for a plant that was lost
 * @param [show] "answer" (the table), "words", "cautions", "Day", or a plant's name for its day
 * @param [start] The date that days count from; the first date when left out
 * @param invocation the call's place and its arguments' addresses
 * @returns the table: one row per plant
 */
export function halfPicked(
  plants: any[][],
  dates: any[][],
  amounts: any[][],
  show: any,
  start: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("HALFPICKED", [plants, dates, amounts, show, start], invocation);
}
