import { answer } from "./answer";

/**
 * Coefficient of variation: how much plants treated alike differ, as a share of their average.
 * @customfunction UNEVENNESS
 * @requiresParameterAddresses
 * @param amounts One number per plant
 * @param [show] "answer", "table", "words", "plan with", a treatment's name, or a column of the table such as "Standard deviation"
 * @param [treatments] The treatment of each plant, as tall as the amounts
 * @param [beds] The bed of each plant, as tall as the amounts
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function unevenness(
  amounts: any[][],
  show: any,
  treatments: any[][],
  beds: any[][],
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("UNEVENNESS", [amounts, show, treatments, beds], invocation);
}
