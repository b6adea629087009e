import { ALPHA } from "./alpha";
import { covariance, type Duo, unscaledVariance } from "./contrast";
import { dunnettOf } from "./jointDistributions";
import { shownToDiffer } from "./shownToDiffer";
import type { TreatmentModel } from "./treatmentModel";

/** How comparisons made together are judged: each p-value, and how many standard errors their ranges reach. */
export interface JointTest {
  /** The p-value of one comparison's t, allowing for all that are made. */
  readonly pValue: (t: number) => number;
  /** Whether the p-value is below a level; seldom needs the p-value itself. */
  readonly isBelow: (t: number, level: number) => boolean;
  /** For ranges of 95 % for all comparisons together; worked out when read. */
  readonly critical: number;
}

/**
 * Dunnett's test: every other treatment against the usual. Exact without beds, for any numbers of plants; with beds and
 * plants missing, with the average of the correlations that the fit gives.
 *
 * @param usual its number
 *
 * Source: C. W. Dunnett (1955), see numerics/dunnett.ts.
 */
export function againstUsualTest(model: TreatmentModel, usual: number): JointTest {
  const others = [...model.means.keys()].filter((treatment) => treatment !== usual);
  const lambdas = model.squares.beds === null ? countShares(model, usual, others) : averageShares(model, usual, others);
  const { df } = model;
  const { tail, critical } = dunnettOf(lambdas);
  const pValue = (t: number) => tail(Math.abs(t), df);
  return {
    pValue,
    isBelow: (t, level) => shownToDiffer({ t, df, comparisons: others.length, pValue: () => pValue(t) }, level),
    get critical() {
      return critical(ALPHA, df);
    },
  };
}

/** λᵢ = √(nᵢ/(nᵢ + n₀)). */
function countShares({ counts }: TreatmentModel, usual: number, others: readonly number[]): readonly number[] {
  const base = counts[usual] ?? Number.NaN;
  return others.map((treatment) => {
    const plants = counts[treatment] ?? Number.NaN;
    return Math.sqrt(plants / (plants + base));
  });
}

/** √(mean ρ) for all, where the mean is not below 0. */
function averageShares(model: TreatmentModel, usual: number, others: readonly number[]): readonly number[] {
  const correlations = others.flatMap((tried, at) =>
    others.slice(at + 1).map((other) => correlation(model, { usual, tried }, { usual, tried: other })),
  );
  const average = correlations.reduce((sum, rho) => sum + rho, 0) / Math.max(1, correlations.length);
  return others.map(() => Math.sqrt(Math.max(0, average)));
}

function correlation(model: TreatmentModel, one: Duo, other: Duo): number {
  const c = model.unscaledCovariance;
  const together =
    covariance(c, one.tried, other.tried) -
    covariance(c, one.tried, one.usual) -
    covariance(c, other.tried, one.usual) +
    covariance(c, one.usual, one.usual);
  return together / Math.sqrt(unscaledVariance(model, one) * unscaledVariance(model, other));
}
