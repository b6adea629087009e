import { upperTail } from "../numerics/fisherF";
import { twoSidedCritical } from "../numerics/studentT";
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
 * @returns null where treatments have different numbers of plants
 *
 * Source: R. A. Fisher (1935), The Design of Experiments; the rice example of Gomez & Gomez (1984), p. 26.
 */
export function leastSignificantDifference({ counts, meanSquare, df }: TreatmentModel): number | null {
  const [first = 0] = counts;
  if (counts.some((count) => count !== first) || !(df > 0)) return null;
  return twoSidedCritical(0.05, df) * Math.sqrt((2 * meanSquare) / first);
}
