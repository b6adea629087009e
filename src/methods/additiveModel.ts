import { leastSquares } from "../numerics/leastSquares";
import { mean } from "../numerics/moments";
import type { PlantInModel, TreatmentModel } from "./treatmentModel";

/**
 * The additive model of treatments in beds, y = treatment + bed, by least squares; plants may be missing.
 *
 * Beds are coded to sum to zero, so that a treatment's coefficient is its average over all beds.
 *
 * @param plants treatments numbered 0 … k − 1 and beds 0 … b − 1, each at least once; k and b two or more
 * @returns null when treatments and beds cannot be told apart (see connectedTreatments.ts)
 *
 * Source: the randomised complete block analysis by ordinary least squares, R's lm(y ~ bed + treatment).
 */
export function additiveModel(plants: readonly PlantInModel[]): TreatmentModel | null {
  const treatments = countOf(plants.map(({ treatment }) => treatment));
  const beds = countOf(plants.map(({ bed }) => bed));
  const center = mean(plants.map(({ value }) => value));
  const values = plants.map(({ value }) => value - center);
  const whole = leastSquares(
    plants.map((plant) => [...mark(plant, treatments), ...bedMarks(plant, beds)]),
    values,
  );
  if (whole.rank < treatments + beds - 1) return null;

  // the centre is rounded, so the values have an average of their own
  const common = mean(values);
  const total = values.reduce((sum, value) => sum + (value - common) ** 2, 0);
  const residual = { sumOfSquares: whole.residualSumOfSquares, df: plants.length - whole.rank };
  const afterBeds = leastSquares(
    plants.map((plant) => [1, ...bedMarks(plant, beds)]),
    values,
  ).residualSumOfSquares;
  const afterTreatments = leastSquares(
    plants.map((plant) => mark(plant, treatments)),
    values,
  ).residualSumOfSquares;
  const meanSquare = residual.df > 0 ? residual.sumOfSquares / residual.df : Number.NaN;
  const bedSquare = (afterTreatments - residual.sumOfSquares) / (beds - 1);
  return {
    means: whole.coefficients.slice(0, treatments).map((gap) => center + gap),
    counts: Array.from({ length: treatments }, (_, at) => plants.filter(({ treatment }) => treatment === at).length),
    unscaledCovariance: whole.unscaledCovariance.slice(0, treatments).map((row) => row.slice(0, treatments)),
    meanSquare,
    df: residual.df,
    squares: {
      beds: { sumOfSquares: total - afterBeds, df: beds - 1 },
      treatments: { sumOfSquares: afterBeds - residual.sumOfSquares, df: treatments - 1 },
      residual,
    },
    bedShare: Math.max(0, bedSquare - meanSquare) / typicalBedSize(plants, beds) / beds,
  };
}

function countOf(labels: readonly number[]): number {
  return new Set(labels).size;
}

function mark({ treatment }: PlantInModel, treatments: number): readonly number[] {
  return Array.from({ length: treatments }, (_, at) => (at === treatment ? 1 : 0));
}

/** Effects that sum to zero: the last bed is minus all the others. */
function bedMarks({ bed }: PlantInModel, beds: number): readonly number[] {
  return Array.from({ length: beds - 1 }, (_, at) => (bed === beds - 1 ? -1 : at === bed ? 1 : 0));
}

/** k₀ = (N − Σnⱼ²/N)/(b − 1): the plants per bed that the mean square of beds speaks of. */
function typicalBedSize(plants: readonly PlantInModel[], beds: number): number {
  const sizes = Array.from({ length: beds }, (_, at) => plants.filter(({ bed }) => bed === at).length);
  const squares = sizes.reduce((sum, size) => sum + size ** 2, 0);
  return (plants.length - squares / plants.length) / (beds - 1);
}
