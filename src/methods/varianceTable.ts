import { upperTail } from "../numerics/fisherF";
import { twoSidedCritical } from "../numerics/studentT";
import { ALPHA } from "./alpha";
import { allDuos, unscaledVariance } from "./contrast";
import type { SquaresOf, TreatmentModel } from "./treatmentModel";

/** The F of one source against the residual, and its p-value; NaN without residual degrees of freedom. */
export function treatmentF(
  { meanSquare, df }: TreatmentModel,
  source: SquaresOf,
): { readonly f: number; readonly p: number } {
  const f = source.sumOfSquares / source.df / meanSquare;
  return { f, p: upperTail(f, source.df, df) };
}

/**
 * The least significant difference at 5 % for one comparison planned beforehand: t·√(2·MSE/n).
 *
 * @returns null where no one figure holds for all pairs: the variance of a difference is not 2/n for each (treatments
 * with different numbers of plants, or missing from different beds)
 *
 * Source: R. A. Fisher (1935), The Design of Experiments; the rice example of Gomez & Gomez (1984), p. 26.
 */
export function leastSignificantDifference(model: TreatmentModel): number | null {
  const { counts, meanSquare, df } = model;
  const variance = 2 / (counts[0] ?? Number.NaN);
  if (!(df > 0) || !allDuos(counts.length).every((duo) => isNear(unscaledVariance(model, duo), variance))) return null;
  return twoSidedCritical(ALPHA, df) * Math.sqrt(meanSquare * variance);
}

/** Equal but for rounding. */
function isNear(variance: number, wanted: number): boolean {
  return Math.abs(variance - wanted) <= 1e-9 * wanted;
}
