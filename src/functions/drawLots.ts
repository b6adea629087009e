import { answer } from "./answer";

/**
 * Randomisation: draws lots for which plant gets which treatment, in beds or not. The draw number makes the list again.
 * @customfunction DRAWLOTS
 * @requiresParameterAddresses
 * @param treatments The treatments' names, or how many there are (A, B, C …)
 * @param plants_each How many plants of each treatment
 * @param draw_number Any whole number, such as the time on your watch without its colon; keep it
 * @param [show] "table" (when left out), "words", "say", or a column of the table such as "Treatment"
 * @param [beds] How many beds, each holding as many of every treatment, or "one each"; separate plants when left out
 * @param invocation the call's place and its arguments' addresses
 * @returns the list, which spills
 */
export function drawLots(
  treatments: any[][],
  plants_each: any,
  draw_number: any,
  show: any,
  beds: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("DRAWLOTS", [treatments, plants_each, draw_number, show, beds], invocation);
}
