import { answer } from "./answer";

/**
 * Meta-analysis for a garden: what several seasons, places or crops say together about one change, a row each.
 * @customfunction MANYTRIALS
 * @requiresParameterAddresses
 * @param usual_averages The usual treatment's average in each season, place or crop
 * @param new_averages The new treatment's average in the same rows
 * @param [show] "answer", "table", "words", "say", "cautions", or a label of the table such as "Ahead in"
 * @param [names] What the rows are: a column headed Season, Crop or Place
 * @param invocation the call's place and its arguments' addresses
 * @returns the common change, in one cell unless a table is asked for
 */
export function manyTrials(
  usual_averages: any[][],
  new_averages: any[][],
  show: any,
  names: any[][],
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("MANYTRIALS", [usual_averages, new_averages, show, names], invocation);
}
