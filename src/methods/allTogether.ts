import { upperTail } from "../numerics/fisherF";
import type { Summary } from "../numerics/moments";
import { sum } from "../numerics/sum";
import type { TreatmentModel } from "./treatmentModel";

/** An F test of all treatments together. */
export interface AllTogether {
  readonly f: number;
  readonly df: readonly [between: number, within: number];
  readonly pValue: number;
}

/** The F test of treatments against the residual, beds taken out first. */
export function allTogether({ squares, meanSquare, df }: TreatmentModel): AllTogether {
  const { sumOfSquares, df: between } = squares.treatments;
  const f = sumOfSquares / between / meanSquare;
  return { f, df: [between, df], pValue: upperTail(f, between, df) };
}

/**
 * Welch's F: all treatments together, each with its own spread.
 *
 * @param groups two plants or more each, none without variation
 *
 * Source: B. L. Welch (1951), Biometrika 38, 330–336; checked against R's oneway.test().
 */
export function allTogetherOwnSpread(groups: readonly Summary[]): AllTogether {
  const weights = groups.map(({ n, variance }) => n / variance);
  const total = sum(weights);
  const k = groups.length;
  const centre = sum(groups.map(({ mean }, at) => (weights[at] ?? 0) * mean)) / total;
  const between = sum(groups.map(({ mean }, at) => (weights[at] ?? 0) * (mean - centre) ** 2)) / (k - 1);
  const lack = sum(groups.map(({ n }, at) => (1 - (weights[at] ?? 0) / total) ** 2 / (n - 1)));
  const f = between / (1 + (2 * (k - 2) * lack) / (k ** 2 - 1));
  const within = (k ** 2 - 1) / (3 * lack);
  return { f, df: [k - 1, within], pValue: upperTail(f, k - 1, within) };
}
