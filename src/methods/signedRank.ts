import { sum } from "../numerics/sum";
import { differences } from "./differences";
import { midranks, roundingOf } from "./midranks";
import { normalTwoSided, type RankTest, tailCount } from "./rankTest";
import { forEachFlipSum } from "./splitSums";
import { MOST_FLIPS } from "./swapCount";

/**
 * Wilcoxon's signed-rank test of pairs.
 *
 * The statistic is V, the rank sum of the differences above 0, as R's wilcox.test(paired = TRUE). Differences of 0 are
 * dropped first; when none are left V is 0 and p is 1. Exact over the midranks up to 20 differences, beyond that normal
 * with corrections for continuity and ties.
 *
 * @param usual and tried: complete pairs, equally many
 *
 * Source: F. Wilcoxon (1945), Biometrics Bulletin 1, 80–83; ties: Lehmann (1975), Nonparametrics, sections 3.2–3.3.
 */
export function signedRank(usual: readonly number[], tried: readonly number[]): RankTest {
  const noise = roundingOf([...usual, ...tried]);
  const kept = differences(usual, tried).filter((difference) => Math.abs(difference) > noise);
  const n = kept.length;
  const { ranks, tieSum } = midranks(kept.map(Math.abs), noise);
  const statistic = sum(ranks.filter((_, i) => (kept[i] ?? 0) > 0));

  if (n <= MOST_FLIPS) {
    // over flips of the ranks' signs: ranks above 0 less ranks below 0, a whole number, is 2V less all ranks
    const doubled = ranks.map((rank) => 2 * rank);
    const tails = tailCount(4 * statistic - sum(doubled));
    forEachFlipSum(doubled, tails.look);
    return { statistic, pValue: tails.twoSided(), exact: true };
  }
  const variance = (n * (n + 1) * (2 * n + 1)) / 24 - tieSum / 48;
  return { statistic, pValue: normalTwoSided(statistic - (n * (n + 1)) / 4, variance), exact: false };
}
