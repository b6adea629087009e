import type { TotalOfPlants } from "../../src/methods/countRatio";

/** Two totals of tests/reference/totals.json: usual total and plants, new total and plants. */
export function totalsOf(totals: readonly number[]): { readonly usual: TotalOfPlants; readonly tried: TotalOfPlants } {
  const [before = 0, beforePlants = 0, after = 0, afterPlants = 0] = totals;
  return { usual: { total: before, plants: beforePlants }, tried: { total: after, plants: afterPlants } };
}
