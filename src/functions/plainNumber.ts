import { answer } from "./answer";

/**
 * Cells with units, marks or words in them as plain numbers: 1 lb 4 oz, 0,726 kg, approx 179, 506*. The word lost stays.
 * @customfunction PLAINNUMBER
 * @requiresParameterAddresses
 * @param cells One cell or a block; the answer has its shape
 * @param [unit] The unit wanted: g (when left out), kg, lb, oz, count, ml, l, cm, m, in or ft
 * @param invocation the call's place and its arguments' addresses
 * @returns the numbers, cell by cell
 */
export function plainNumber(cells: any[][], unit: any, invocation: CustomFunctions.Invocation): any[][] {
  return answer("PLAINNUMBER", [cells, unit], invocation);
}
