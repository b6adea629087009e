import type { Labels } from "../ranges/readLabels";

/**
 * The number of each row's label, in order of appearance from 0; null where the row has none. Labels that were not given
 * count as one for all.
 */
export function labelNumbers(labels: Labels | null): (row: number) => number | null {
  if (labels === null) return () => 0;
  const numbers = new Map(labels.names.map((name, at) => [name, at]));
  return (row) => numbers.get(labels.entries[row] ?? "") ?? null;
}
