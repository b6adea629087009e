/** A plant of one of several treatments, in its bed. Treatments and beds are known by whole numbers from 0. */
export interface PlantInModel {
  readonly value: number;
  readonly treatment: number;
  readonly bed: number;
}

/** A sum of squares about averages, in the values' unit squared, and its degrees of freedom. */
export interface SquaresOf {
  readonly sumOfSquares: number;
  readonly df: number;
}

/** Averages of several treatments with one common spread: what every comparison of them starts from. */
export interface TreatmentModel {
  /** One per treatment, in the values' unit; with beds, as if every treatment had stood in every bed. */
  readonly means: readonly number[];
  /** Usable plants per treatment. */
  readonly counts: readonly number[];
  /** Times the residual mean square, the covariance of the means. */
  readonly unscaledCovariance: readonly (readonly number[])[];
  /** Residual mean square. */
  readonly meanSquare: number;
  /** Residual degrees of freedom. */
  readonly df: number;
  /** Beds first, then treatments; beds are null without beds. */
  readonly squares: { readonly beds: SquaresOf | null; readonly treatments: SquaresOf; readonly residual: SquaresOf };
  /** The variance between beds divided by their number, in the values' unit squared; 0 without beds. */
  readonly bedShare: number;
}
