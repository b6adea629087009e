import { answer } from "./answer";

/**
 * Percent change from the usual to the new, with the usual as the base (100 %). Two numbers, or two ranges with one number per plant.
 * @customfunction UPDOWN
 * @requiresParameterAddresses
 * @param usual What you usually do: a number, or one number per plant, with or without a heading
 * @param new_ What you tried: a number, or one number per plant, with or without a heading
 * @param [show] "answer", "table", "words", "say", "short", or a label of the table such as "Change low"
 * @param [confidence] How many of such ranges should hold the true change; 95% when left out
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function upDown(
  usual: any[][],
  new_: any[][],
  show: any,
  confidence: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("UPDOWN", [usual, new_, show, confidence], invocation);
}
