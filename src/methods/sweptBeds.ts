import { inverseOf } from "../numerics/cholesky";
import { mean } from "../numerics/moments";

/** A plant of a bed, its value taken around a common centre. */
export interface SweptPlant {
  readonly value: number;
  readonly treatment: number;
}

/** The treatments of a trial in beds, with the beds' own levels taken off. */
export interface SweptBeds {
  /** One per treatment, as if it had stood in every bed; around the same centre as the values. */
  readonly means: readonly number[];
  /** Times the residual mean square, the covariance of the means. */
  readonly unscaledCovariance: readonly (readonly number[])[];
  readonly residualSumOfSquares: number;
}

/**
 * Fits treatment + bed by least squares. The beds are swept out first, so that the work grows with the plants, and with
 * the cube of the treatments only.
 *
 * @param beds the plants of each bed, one or more
 * @param treatments how many there are, numbered from 0
 * @returns null when beds and treatments cannot be told apart
 *
 * Source: the reduced normal equations of the treatments (intra-block analysis): F. Yates (1940), Annals of Eugenics
 * 10, 317–325.
 */
export function sweptBeds(beds: readonly (readonly SweptPlant[])[], treatments: number): SweptBeds | null {
  const { matrix, gaps } = reduced(beds, treatments);
  const inverse = inverseOf(matrix);
  if (inverse === null) return null;
  const effects = inverse.map((row) => dot(row, gaps));
  const levels = beds.map((plants) =>
    mean(plants.map(({ value, treatment }) => value - (effects[treatment] as number))),
  );
  const level = mean(levels);
  return {
    means: effects.map((effect) => effect + level),
    unscaledCovariance: covarianceOfMeans(inverse, beds),
    residualSumOfSquares: beds.reduce(
      (sum, plants, bed) =>
        plants.reduce(
          (part, { value, treatment }) =>
            part + (value - (effects[treatment] as number) - (levels[bed] as number)) ** 2,
          sum,
        ),
      0,
    ),
  };
}

/** The treatments' equations once every value is taken around its bed's average. */
function reduced(
  beds: readonly (readonly SweptPlant[])[],
  treatments: number,
): { readonly matrix: readonly (readonly number[])[]; readonly gaps: readonly number[] } {
  // effects are known but for a constant; a constant added to every entry asks for those that sum to zero
  const plants = beds.reduce((sum, bed) => sum + bed.length, 0);
  const matrix = Array.from({ length: treatments }, () => new Array<number>(treatments).fill(plants / treatments ** 2));
  const gaps = new Array<number>(treatments).fill(0);
  for (const bed of beds) {
    const level = mean(bed.map(({ value }) => value));
    for (const { value, treatment } of bed) gaps[treatment] = (gaps[treatment] as number) + (value - level);
    const counts = countsIn(bed);
    for (const [treatment, count] of counts) {
      const row = matrix[treatment] as number[];
      row[treatment] = (row[treatment] as number) + count;
      for (const [other, more] of counts) row[other] = (row[other] as number) - (count * more) / bed.length;
    }
  }
  return { matrix, gaps };
}

/** How many plants of each of its treatments a bed holds. */
function countsIn(bed: readonly SweptPlant[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const { treatment } of bed) counts.set(treatment, (counts.get(treatment) ?? 0) + 1);
  return counts;
}

/** A mean is its treatment's effect, less what the beds' levels owe to all effects, plus the average of the beds. */
function covarianceOfMeans(
  inverse: readonly (readonly number[])[],
  beds: readonly (readonly SweptPlant[])[],
): readonly (readonly number[])[] {
  const owed = new Array<number>(inverse.length).fill(0);
  for (const bed of beds) {
    for (const { treatment } of bed) owed[treatment] = (owed[treatment] as number) + 1 / bed.length / beds.length;
  }
  const shared = inverse.map((row) => dot(row, owed));
  const ofBeds = beds.reduce((sum, bed) => sum + 1 / bed.length, 0) / beds.length ** 2;
  const common = dot(shared, owed) + ofBeds;
  return inverse.map((row, i) => row.map((entry, j) => entry - (shared[i] as number) - (shared[j] as number) + common));
}

function dot(left: readonly number[], right: readonly number[]): number {
  return left.reduce((sum, entry, at) => sum + entry * (right[at] as number), 0);
}
