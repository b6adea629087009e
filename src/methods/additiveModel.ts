import { mean } from "../numerics/moments";
import { sweptBeds } from "./sweptBeds";
import type { PlantInModel, TreatmentModel } from "./treatmentModel";

/**
 * The additive model of treatments in beds, y = treatment + bed, by least squares; plants may be missing.
 *
 * @param plants treatments numbered 0 … k − 1 and beds 0 … b − 1, each at least once; k and b two or more
 * @returns null when treatments and beds cannot be told apart (see connectedTreatments.ts)
 *
 * Source: the randomised complete block analysis by ordinary least squares, R's lm(y ~ bed + treatment). Values are
 * taken around their average, so that those far from zero keep their digits.
 */
export function additiveModel(plants: readonly PlantInModel[]): TreatmentModel | null {
  const center = mean(plants.map(({ value }) => value));
  const around = plants.map(({ value, treatment, bed }) => ({ value: value - center, treatment, bed }));
  const beds = grouped(around, ({ bed }) => bed);
  const treatments = grouped(around, ({ treatment }) => treatment);
  const fit = sweptBeds(beds, treatments.length);
  if (fit === null) return null;

  const residual = { sumOfSquares: fit.residualSumOfSquares, df: plants.length - treatments.length - beds.length + 1 };
  const afterBeds = squaresWithin(beds);
  const meanSquare = residual.df > 0 ? residual.sumOfSquares / residual.df : Number.NaN;
  const bedSquare = (squaresWithin(treatments) - residual.sumOfSquares) / (beds.length - 1);
  return {
    means: fit.means.map((gap) => center + gap),
    counts: treatments.map((group) => group.length),
    unscaledCovariance: fit.unscaledCovariance,
    meanSquare,
    df: residual.df,
    squares: {
      beds: { sumOfSquares: squaresWithin([around]) - afterBeds, df: beds.length - 1 },
      treatments: { sumOfSquares: afterBeds - residual.sumOfSquares, df: treatments.length - 1 },
      residual,
    },
    bedShare: Math.max(0, bedSquare - meanSquare) / typicalBedSize(beds, plants.length) / beds.length,
  };
}

type Group = readonly PlantInModel[];

/** By a number from 0 on. */
function grouped(plants: Group, numberOf: (plant: PlantInModel) => number): readonly Group[] {
  const groups: PlantInModel[][] = [];
  for (const plant of plants) {
    const group = groups[numberOf(plant)];
    if (group === undefined) groups[numberOf(plant)] = [plant];
    else group.push(plant);
  }
  return groups;
}

/** The sum of squares of the values about the averages of their groups. */
function squaresWithin(groups: readonly Group[]): number {
  return groups.reduce((sum, group) => {
    const average = mean(group.map(({ value }) => value));
    return group.reduce((part, { value }) => part + (value - average) ** 2, sum);
  }, 0);
}

/** k₀ = (N − Σnⱼ²/N)/(b − 1): the plants per bed that the mean square of beds speaks of. */
function typicalBedSize(beds: readonly Group[], plants: number): number {
  const squares = beds.reduce((sum, bed) => sum + bed.length ** 2, 0);
  return (plants - squares / plants) / (beds.length - 1);
}
