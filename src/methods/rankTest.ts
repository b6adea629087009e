import * as normal from "../numerics/normal";

/** What a rank test found. */
export interface RankTest {
  /** Wilcoxon's W or V as R names it. */
  readonly statistic: number;
  /** Two-sided, in [0, 1]: twice the smaller tail, at most 1. Far out, the normal approximation rounds to 0. */
  readonly pValue: number;
  /** True when all arrangements of the ranks were counted, false for the normal approximation. */
  readonly exact: boolean;
}

/** A counter of arrangements of ranks at or below, and at or above, the statistic seen. */
export interface TailCount {
  readonly look: (statistic: number) => void;
  readonly twoSided: () => number;
}

/** Starts counting; statistics are compared as they are, so give whole numbers (doubled midranks). */
export function tailCount(seen: number): TailCount {
  let [below, above, all] = [0, 0, 0];
  return {
    look(statistic) {
      all += 1;
      if (statistic <= seen) below += 1;
      if (statistic >= seen) above += 1;
    },
    twoSided: () => Math.min(1, (2 * Math.min(below, above)) / all),
  };
}

/**
 * The two-sided p-value of a statistic that is nearly normal, with continuity correction; 1 when it cannot vary.
 *
 * @param distance the statistic less its expected value
 */
export function normalTwoSided(distance: number, variance: number): number {
  if (variance <= 0) return 1;
  return Math.min(1, 2 * normal.upperTail((Math.abs(distance) - 0.5) / Math.sqrt(variance)));
}
