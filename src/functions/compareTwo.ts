import { answer } from "./answer";

/**
 * t-test for two treatments, in plain words: did the new way give more or less than the usual, and could it be luck?
 * @customfunction COMPARETWO
 * @requiresParameterAddresses
 * @param usual One number per plant of the usual treatment, with or without a heading
 * @param new_ One number per plant of the new treatment, with or without a heading
 * @param [show] "answer", "table", "words", "say", "cautions", or a label of the table such as "p value"
 * @param [how] "separate" plants (when left out), or "pairs" or "beds": row by row, one of each
 * @param [worthwhile] The smallest change you would act on; 10% when left out, below zero when less is wanted
 * @param [confidence] How many of such ranges should hold the true change; 95% when left out
 * @param [lost_plants] "leave out" (when left out) or "count as zero"
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function compareTwo(
  usual: any[][],
  new_: any[][],
  show: any,
  how: any,
  worthwhile: any,
  confidence: any,
  lost_plants: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("COMPARETWO", [usual, new_, show, how, worthwhile, confidence, lost_plants], invocation);
}
