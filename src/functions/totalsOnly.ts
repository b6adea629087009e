import { answer } from "./answer";

/**
 * Rate ratio of two season totals: what they can say when no record of each plant was kept.
 * @customfunction TOTALSONLY
 * @requiresParameterAddresses
 * @param usual_total The season total of the usual treatment, with or without a heading
 * @param usual_plants How many plants it is from
 * @param new_total The season total of the new treatment, with or without a heading
 * @param new_plants How many plants it is from
 * @param [show] "answer", "table", "words", "say", "cautions", or a label of the table such as "Change low"
 * @param [unevenness] How much plants treated alike differ, such as 25%; 35% when left out
 * @param [measure] "count" (when left out) or "weight"
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function totalsOnly(
  usual_total: any[][],
  usual_plants: any,
  new_total: any[][],
  new_plants: any,
  show: any,
  unevenness: any,
  measure: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  const given = [usual_total, usual_plants, new_total, new_plants, show, unevenness, measure];
  return answer("TOTALSONLY", given, invocation);
}
