import { bare, calledFunctions } from "./pieces";

/**
 * Whether the grid can work a formula out: every function is one it knows, and the formula needs no table and no
 * other file.
 *
 * @param formula in the grid's form
 * @param known the functions' names, in capitals
 */
export function isLive(formula: string, known: ReadonlySet<string>): boolean {
  const outside = /[[\]|]/.test(bare(formula)) || /'[^']*\[[^']*'!/.test(formula);
  return !outside && calledFunctions(formula).every((name) => known.has(name));
}
