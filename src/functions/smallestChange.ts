import { answer } from "./answer";

/**
 * Detectable difference: the smallest true change that a trial of this size is likely to show.
 * @customfunction SMALLESTCHANGE
 * @requiresParameterAddresses
 * @param plants_each How many plants of each treatment
 * @param unevenness How much plants treated alike differ, such as 25%; an empty cell takes 35%
 * @param [show] "answer", "table", "words", or a label of the table
 * @param [treatments] How many treatments, the usual among them; 2 when left out
 * @param [beds] How many beds, each holding as many of every treatment, or "one each"; separate plants when left out
 * @param [chance] The chance you want of seeing the change; 80% when left out
 * @param [direction] "more" (when left out) or "less"
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function smallestChange(
  plants_each: any,
  unevenness: any,
  show: any,
  treatments: any,
  beds: any,
  chance: any,
  direction: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("SMALLESTCHANGE", [plants_each, unevenness, show, treatments, beds, chance, direction], invocation);
}
