import { answer } from "./answer";

/**
 * What in a sheet needs a look before you use it: notes in number cells, units, totals, doubles, dates, odd names and sizes.
 * @customfunction LOOKOVER
 * @requiresParameterAddresses
 * @param cells One column, or a whole block with its heading row
 * @param [show] "answer", "table", "words", "cautions", a line such as "Unreadable", or a column of the table
 * @param [kind] "amount", "date", "label" or "per plant"; found out when left out
 * @param [lowest_ok] Amounts below this are listed
 * @param [highest_ok] Amounts above this are listed
 * @param invocation the call's place and its arguments' addresses
 * @returns the answer, in one cell unless a table is asked for
 */
export function lookOver(
  cells: any[][],
  show: any,
  kind: any,
  lowest_ok: any,
  highest_ok: any,
  invocation: CustomFunctions.Invocation,
): any[][] {
  return answer("LOOKOVER", [cells, show, kind, lowest_ok, highest_ok], invocation);
}
