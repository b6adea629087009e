import { variance } from "../numerics/moments";
import { middlePick } from "./middlePick";

/** So many picks must have both, before they tell whether one counts the other. */
const FEWEST = 8;
/** Dividing must take away at least a fifth of the variance. */
const EVENER = 0.8;

/**
 * Whether one column counts the fruit of another: whole numbers, none below zero, smaller than the amounts where those
 * are whole as well, and the amounts differ less per fruit than a pick (variance of logarithms). Our own rule, as no
 * source rules it: a bed's number is no count.
 */
export function countsFruit(counts: Float64Array, amounts: Float64Array): boolean {
  if (!areCounts(counts) || (areCounts(amounts) && middlePick(counts) >= middlePick(amounts))) return false;
  const both = [...counts.keys()].filter((at) => (counts[at] ?? 0) > 0 && (amounts[at] ?? 0) > 0);
  if (both.length < FEWEST) return false;
  const logs = both.map((at) => Math.log(amounts[at] ?? 1));
  const perFruit = both.map((at, index) => (logs[index] ?? 0) - Math.log(counts[at] ?? 1));
  return variance(perFruit) < EVENER * variance(logs);
}

function areCounts(values: Float64Array): boolean {
  return values.every((value) => Number.isNaN(value) || (value >= 0 && Number.isInteger(value)));
}
