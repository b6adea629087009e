import { mean, summary } from "../numerics/moments";
import type { TreatmentModel } from "./treatmentModel";

/**
 * The pooled one-way model: separate plants of several treatments, one spread for all.
 *
 * @param groups two or more treatments with one plant or more each
 * @returns df 0 and meanSquare NaN when every treatment has one plant
 *
 * Source: the analysis of variance of one factor; R's aov(). All values are taken around their common average, so that
 * values far from zero keep their digits (NIST StRD).
 */
export function oneWayModel(groups: readonly (readonly number[])[]): TreatmentModel {
  const center = mean(groups.flat());
  const parts = groups.map((group) => summary(group.map((value) => value - center)));
  const plants = parts.reduce((total, { n }) => total + n, 0);
  const within = parts.reduce((total, { n, variance }) => total + (n > 1 ? (n - 1) * variance : 0), 0);
  // the centre is rounded, so the gaps have a common average of their own
  const common = parts.reduce((total, { n, mean: gap }) => total + n * gap, 0) / plants;
  const between = parts.reduce((total, { n, mean: gap }) => total + n * (gap - common) ** 2, 0);
  const df = plants - groups.length;
  return {
    means: parts.map(({ mean: gap }) => center + gap),
    counts: parts.map(({ n }) => n),
    unscaledCovariance: parts.map(({ n }, at) => parts.map((_, other) => (other === at ? 1 / n : 0))),
    // 0/0, not a number, when every treatment has one plant
    meanSquare: within / df,
    df,
    squares: {
      beds: null,
      treatments: { sumOfSquares: between, df: groups.length - 1 },
      residual: { sumOfSquares: within, df },
    },
    bedShare: 0,
  };
}
