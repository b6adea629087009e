import { answer } from "./answer";

/**
 * Sample size: how many plants of each treatment to set out before a trial can show the change you hope for.
 * @customfunction PLANTSNEEDED
 * @requiresParameterAddresses
 * @param change The change you hope for, such as 30%; below zero for less
 * @param unevenness How much plants treated alike differ, such as 25%; an empty cell takes 35%
 * @param [show] "answer", "table", "words", or a label of the table such as "In all"
 * @param [treatments] How many treatments, the usual among them; 2 when left out
 * @param [beds] How many beds, each holding as many of every treatment, or "one each"; separate plants when left out
 * @param [chance] The chance you want of seeing the change; 80% when left out
 * @param [losses] The share of plants you expect to lose; 10% when left out
 * @param [worthwhile] The smallest change you would act on; 10% when left out
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function plantsNeeded(
  change: any,
  unevenness: any,
  show: any,
  treatments: any,
  beds: any,
  chance: any,
  losses: any,
  worthwhile: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("PLANTSNEEDED", [change, unevenness, show, treatments, beds, chance, losses, worthwhile], invocation);
}
