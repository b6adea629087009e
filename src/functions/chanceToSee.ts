import { answer } from "./answer";

/**
 * Power: the chance that a trial of this size shows a true change of this size.
 * @customfunction CHANCETOSEE
 * @requiresParameterAddresses
 * @param change The true change, such as 30%; below zero for less
 * @param plants_each How many plants of each treatment
 * @param unevenness How much plants treated alike differ, such as 25%; an empty cell takes 35%
 * @param [show] "answer", "table", "words", or a label of the table
 * @param [treatments] How many treatments, the usual among them; 2 when left out
 * @param [beds] How many beds, each holding as many of every treatment, or "one each"; separate plants when left out
 * @param [worthwhile] The smallest change you would act on; 10% when left out
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function chanceToSee(
  change: any,
  plants_each: any,
  unevenness: any,
  show: any,
  treatments: any,
  beds: any,
  worthwhile: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("CHANCETOSEE", [change, plants_each, unevenness, show, treatments, beds, worthwhile], invocation);
}
