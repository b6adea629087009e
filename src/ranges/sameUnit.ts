import type { Problem } from "../nouns/problem";
import type { Sample } from "../nouns/sample";

/** Null when the samples' units agree or one of them names none, else the Problem that names both units. */
export function sameUnit(first: Sample, second: Sample): Problem | null {
  if (first.unit === null || second.unit === null || first.unit === second.unit) return null;
  return {
    problem: "units-differ",
    first: first.argument,
    firstUnit: first.unit,
    second: second.argument,
    secondUnit: second.unit,
  };
}
