import { answer } from "./answer";

/**
 * Yield per plant, with lost plants counted by a rule you name. Type the word lost for a plant that died or was stolen.
 * @customfunction PERPLANT
 * @requiresParameterAddresses
 * @param amounts One number per plant, or one season total when you also give planted
 * @param [show] "answer", "table", "words", "say", or a label of the table such as "Plants lost"
 * @param [planted] How many plants were set out, or the range of their labels
 * @param [lost_plants] "leave out" (when left out) or "count as zero"
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function perPlant(
  amounts: any[][],
  show: any,
  planted: any[][],
  lost_plants: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("PERPLANT", [amounts, show, planted, lost_plants], invocation);
}
