import type { Absence } from "../nouns/known";
import type { Summary } from "../numerics/moments";
import { isRoundOff, type MeanComparison, meanComparison } from "./meanComparison";

/**
 * Welch's comparison of two averages: do two groups of separate plants differ by more than chance allows? The groups
 * may differ in size and in spread. For pairs see paired.ts.
 *
 * @param confidence of the range, in (0, 1)
 * @returns the difference new − usual in the values' unit; an Absence when a group has fewer than two plants or when
 *   neither group varies
 *
 * Source: B. L. Welch (1947), Biometrika 34, 28–35, equations for t and df; checked against R's t.test().
 */
export function welch(usual: Summary, tried: Summary, confidence: number): MeanComparison | Absence {
  if (usual.n < 2 || tried.n < 2) return { absent: "one-plant" };
  const usualShare = usual.variance / usual.n;
  const triedShare = tried.variance / tried.n;
  const standardError = Math.sqrt(triedShare + usualShare);
  if (isRoundOff(standardError, usual.mean, tried.mean)) return { absent: "all-equal" };
  const df = welchDf({ share: usualShare, n: usual.n }, { share: triedShare, n: tried.n });
  return meanComparison({ difference: tried.mean - usual.mean, standardError, df }, confidence);
}

/** One group's part in the variance of a difference: its variance over n, and the n it is known from (2 or more). */
export interface Share {
  readonly share: number;
  readonly n: number;
}

/** Welch's degrees of freedom, between the smaller n − 1 and the sum of both; NaN when both shares are 0. */
export function welchDf(usual: Share, tried: Share): number {
  const total = usual.share + tried.share;
  return total ** 2 / (tried.share ** 2 / (tried.n - 1) + usual.share ** 2 / (usual.n - 1));
}
