import type { TreatmentModel } from "./treatmentModel";

/** Two of the treatments, by their numbers: the tried one against the usual one. */
export interface Duo {
  readonly usual: number;
  readonly tried: number;
}

/** Every two of so many treatments, each pair once. */
export function allDuos(count: number): readonly Duo[] {
  const all = Array.from({ length: count }, (_, at) => at);
  return all.flatMap((usual) => all.slice(usual + 1).map((tried) => ({ usual, tried })));
}

/** The difference tried − usual of two averages of a model. */
export interface Contrast {
  /** In the values' unit. */
  readonly difference: number;
  readonly standardError: number;
  readonly t: number;
}

/** Sets two averages of a model against each other. */
export function contrast(model: TreatmentModel, duo: Duo): Contrast {
  const difference = at(model.means, duo.tried) - at(model.means, duo.usual);
  const standardError = Math.sqrt(model.meanSquare * unscaledVariance(model, duo));
  return { difference, standardError, t: difference / standardError };
}

/** Times the residual mean square, the variance of the difference. */
export function unscaledVariance({ unscaledCovariance }: TreatmentModel, { usual, tried }: Duo): number {
  return (
    covariance(unscaledCovariance, tried, tried) +
    covariance(unscaledCovariance, usual, usual) -
    2 * covariance(unscaledCovariance, tried, usual)
  );
}

/** An entry of a matrix; NaN outside it. */
export function covariance(matrix: readonly (readonly number[])[], row: number, column: number): number {
  return matrix[row]?.[column] ?? Number.NaN;
}

function at(values: readonly number[], index: number): number {
  return values[index] ?? Number.NaN;
}
