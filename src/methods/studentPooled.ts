import type { Absence } from "../nouns/known";
import type { Summary } from "../numerics/moments";
import { isRoundOff, type MeanComparison, meanComparison } from "./meanComparison";

/**
 * Student's comparison of two averages, for groups of separate plants that vary equally ("equal unevenness").
 *
 * @param confidence of the range, in (0, 1)
 * @returns the difference new − usual in the values' unit; an Absence as for welch.ts
 *
 * Source: R. A. Fisher (1925), Metron 5, 90–104; checked against R's t.test(var.equal = TRUE).
 */
export function studentPooled(usual: Summary, tried: Summary, confidence: number): MeanComparison | Absence {
  if (usual.n < 2 || tried.n < 2) return { absent: "one-plant" };
  const standardError = Math.sqrt(pooledVariance([usual, tried]) * (1 / tried.n + 1 / usual.n));
  if (isRoundOff(standardError, usual.mean, tried.mean)) return { absent: "all-equal" };
  const df = usual.n + tried.n - 2;
  return meanComparison({ difference: tried.mean - usual.mean, standardError, df }, confidence);
}

/** The variance within groups, weighted by n − 1, in the values' unit squared; NaN when no group has two plants. */
export function pooledVariance(groups: readonly Summary[]): number {
  let squares = 0;
  let df = 0;
  for (const { n, variance } of groups) {
    if (n < 2) continue;
    squares += (n - 1) * variance;
    df += n - 1;
  }
  return squares / df;
}
