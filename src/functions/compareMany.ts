import { answer } from "./answer";

/**
 * Analysis of variance in plain words: several treatments against the usual, or against each other, with or without beds.
 * @customfunction COMPAREMANY
 * @requiresParameterAddresses
 * @param amounts One number per plant, all treatments in one range
 * @param treatments The treatment of each plant, as tall as the amounts
 * @param [show] "answer", "table", "words", "say", "cautions", "all pairs", "difference", "anova", "letters", a treatment's name, or a column of the table
 * @param [beds] The bed of each plant, as tall as the amounts; separate plants when left out
 * @param [usual] The name of the usual treatment
 * @param [how] "against usual" (when the usual is named) or "all pairs"
 * @param [worthwhile] The smallest change you would act on; 10% when left out, below zero when less is wanted
 * @param [lost_plants] "leave out" (when left out) or "count as zero"
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function compareMany(
  amounts: any[][],
  treatments: any[][],
  show: any,
  beds: any[][],
  usual: any,
  how: any,
  worthwhile: any,
  lost_plants: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("COMPAREMANY", [amounts, treatments, show, beds, usual, how, worthwhile, lost_plants], invocation);
}
