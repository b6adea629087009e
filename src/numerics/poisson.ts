import { gammaTails } from "./incompleteGamma";

/**
 * P(X ≤ k) for a Poisson count X with the given average.
 *
 * @param k any number, rounded down to a whole one; below 0 the answer is 0
 * @param average 0 or more
 * @returns NaN outside the domain
 *
 * Source: DLMF 8.4.10, P(X ≤ k) = Q(k + 1, average).
 */
export function lowerTail(k: number, average: number): number {
  if (!(average >= 0)) return Number.NaN;
  return k < 0 ? 0 : gammaTails(Math.floor(k) + 1, average).upper;
}

/** P(X > k), the complement of lowerTail with its own relative accuracy. */
export function upperTail(k: number, average: number): number {
  if (!(average >= 0)) return Number.NaN;
  return k < 0 ? 1 : gammaTails(Math.floor(k) + 1, average).lower;
}
