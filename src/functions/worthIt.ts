import { answer } from "./answer";

/**
 * Partial budget: does the extra harvest of the new way pay for what it costs, and could that be luck?
 * @customfunction WORTHIT
 * @requiresParameterAddresses
 * @param usual One number per plant of the usual treatment, or its average
 * @param new_ One number per plant of the new treatment, or its average
 * @param price What one unit of the harvest sells for, such as 2.50 for a kilogram
 * @param extra_cost What the new way costs more per plant, materials and labour; below zero when it is cheaper
 * @param [show] "answer", "table", "words", "say", "cautions", or a label of the table such as "Break-even extra"
 * @param [how] "separate" plants (when left out) or "pairs": row by row, one of each
 * @param [next_plants] How many plants the next planting has
 * @param invocation the call's place and its arguments' addresses
 * @returns the money left per plant, in one cell unless a table is asked for
 */
export function worthIt(
  usual: any[][],
  new_: any[][],
  price: any,
  extra_cost: any,
  show: any,
  how: any,
  next_plants: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("WORTHIT", [usual, new_, price, extra_cost, show, how, next_plants], invocation);
}
