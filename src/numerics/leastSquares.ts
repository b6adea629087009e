import { reflect } from "./householder";

/** An ordinary least-squares fit. Columns that depend on earlier ones are dropped, as R's lm() does. */
export interface Fit {
  /** One per column, NaN for a dropped one. */
  readonly coefficients: readonly number[];
  /** In the response's unit squared. */
  readonly residualSumOfSquares: number;
  /** How many columns were kept; residual degrees of freedom = rows − rank. */
  readonly rank: number;
  /** Indices of the dropped columns. */
  readonly dropped: readonly number[];
  /** (XᵀX)⁻¹ over the kept columns: times the residual variance it gives the coefficients' covariance. NaN if dropped. */
  readonly unscaledCovariance: readonly (readonly number[])[];
}

/**
 * Fits y by the columns of a design.
 *
 * @param rows one row of the design per observation, all of the same length; at least one
 * @param y the response, one number per row
 * @returns NaN throughout when the numbers are not finite
 *
 * Source: Householder triangularisation, Golub (1965), Numerische Mathematik 7, 206–216; see householder.ts.
 */
export function leastSquares(rows: readonly (readonly number[])[], y: readonly number[]): Fit {
  const width = rows[0]?.length ?? 0;
  const columns = Array.from({ length: width }, (_, j) => Float64Array.from(rows, (row) => row[j] ?? Number.NaN));
  const { kept, triangle, rotated } = reflect(columns, Float64Array.from(y));
  const rank = kept.length;
  const inverse = invertTriangle(triangle);

  const coefficients = new Array<number>(width).fill(Number.NaN);
  const unscaledCovariance = Array.from({ length: width }, () => new Array<number>(width).fill(Number.NaN));
  for (const [i, column] of kept.entries()) {
    coefficients[column] = dot(inverse[i] ?? [], rotated);
    const covariances = unscaledCovariance[column] ?? [];
    for (const [j, other] of kept.entries()) covariances[other] = dot(inverse[i] ?? [], inverse[j] ?? []);
  }
  const residualSumOfSquares = rotated.slice(rank).reduce((sum, left) => sum + left * left, 0);
  const dropped = [...columns.keys()].filter((column) => !kept.includes(column));
  return { coefficients, residualSumOfSquares, rank, dropped, unscaledCovariance };
}

/** The inverse of an upper triangular matrix given by columns, as rows. */
function invertTriangle(triangle: readonly (readonly number[])[]): number[][] {
  const size = triangle.length;
  const inverse = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (const [j, column] of triangle.entries()) {
    const pivot = column[j] ?? Number.NaN;
    // column j of the inverse: earlier columns of it times the entries above the pivot, with the sign turned
    for (const row of inverse.slice(0, j)) row[j] = -dot(row, column) / pivot;
    (inverse[j] ?? [])[j] = 1 / pivot;
  }
  return inverse;
}

/** Over the shorter length. */
function dot(left: ArrayLike<number>, right: ArrayLike<number>): number {
  let sum = 0;
  const length = Math.min(left.length, right.length);
  for (let i = 0; i < length; i += 1) sum += (left[i] as number) * (right[i] as number);
  return sum;
}
