import { choose } from "../numerics/choose";
import { sum } from "../numerics/sum";
import { midranks, roundingOf } from "./midranks";
import { normalTwoSided, type RankTest, tailCount } from "./rankTest";
import { forEachSplitSum } from "./splitSums";
import { MOST_SPLITS } from "./swapCount";

/**
 * Wilcoxon's rank-sum test of two groups of separate plants.
 *
 * The statistic is W of the new plants: their rank sum less the smallest it can be, as R's
 * wilcox.test(x = new, y = usual). Exact over the midranks up to 3 000 000 splits, beyond that normal with corrections
 * for continuity and ties.
 *
 * @param usual and tried: one plant or more each
 *
 * Source: F. Wilcoxon (1945), Biometrics Bulletin 1, 80–83; ties: Lehmann (1975), Nonparametrics, sections 1.2–1.4.
 */
export function rankSum(usual: readonly number[], tried: readonly number[]): RankTest {
  const all = [...tried, ...usual];
  const { ranks, tieSum } = midranks(all, roundingOf(all));
  const [m, n] = [tried.length, usual.length];
  const smallest = (m * (m + 1)) / 2;
  const statistic = sum(ranks.slice(0, m)) - smallest;

  if (choose(m + n, m) <= MOST_SPLITS) {
    // the smaller group has fewer sums to add; a two-sided p is the same from either side
    const size = Math.min(m, n);
    const doubled = ranks.map((rank) => 2 * rank);
    const tails = tailCount(sum(m <= n ? doubled.slice(0, m) : doubled.slice(m)));
    forEachSplitSum(doubled, size, tails.look);
    return { statistic, pValue: tails.twoSided(), exact: true };
  }
  const variance = ((m * n) / 12) * (m + n + 1 - tieSum / ((m + n) * (m + n - 1)));
  return { statistic, pValue: normalTwoSided(statistic - (m * n) / 2, variance), exact: false };
}
