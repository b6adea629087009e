import { leastSquares } from "../numerics/leastSquares";
import { mean } from "../numerics/moments";
import { type PooledUnevenness, shareOfMean } from "./unevenness";

/** A plant in its bed. Treatments and beds are known by any numbers. */
export interface BedPlant {
  readonly value: number;
  readonly treatment: number;
  readonly bed: number;
}

/**
 * The unevenness that is left within beds: √MSE of the additive model treatment + bed, as a fraction of the average of
 * all plants. Plants may be missing, and all may have one treatment.
 *
 * @returns an Absence when beds and treatments use up all degrees of freedom, or the average is not above 0
 *
 * Source: the randomised-block analysis by ordinary least squares, R's lm(value ~ bed + treatment).
 */
export function withinBeds(plants: readonly BedPlant[]): PooledUnevenness {
  if (plants.length === 0) return { unevenness: { absent: "no-usable-plants" }, df: 0 };
  const values = plants.map(({ value }) => value);
  const average = mean(values);
  const treatments = distinct(plants.map(({ treatment }) => treatment));
  const beds = distinct(plants.map(({ bed }) => bed));
  const design = plants.map(({ treatment, bed }) => [1, ...marks(treatments, treatment), ...marks(beds, bed)]);
  // around the average, so that equal plants leave nothing but zeros
  const centered = values.map((value) => value - average);
  const { rank, residualSumOfSquares } = leastSquares(design, centered);
  const df = plants.length - rank;
  if (df < 1) return { unevenness: { absent: "no-degrees-of-freedom" }, df: 0 };
  return { unevenness: shareOfMean(Math.sqrt(residualSumOfSquares / df), average), df };
}

function distinct(labels: readonly number[]): readonly number[] {
  return [...new Set(labels)];
}

/** One column per label but the first: 1 where the plant bears it. */
function marks(labels: readonly number[], label: number): readonly number[] {
  return labels.slice(1).map((other) => (other === label ? 1 : 0));
}
