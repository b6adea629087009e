import type { RandomSource } from "../../../src/numerics/random";
import { negativeBinomial } from "./negativeBinomial";
import { standardGamma } from "./standardGamma";
import { standardNormal } from "./standardNormal";

/** How single plants treated alike differ: weights of two shapes, and counts of fruit. */
export type PlantKind = "gamma" | "lognormal" | "counts";

/** Plants treated alike: their true average and their unevenness as a fraction of it. */
export interface PlantsAlike {
  readonly kind: PlantKind;
  readonly mean: number;
  readonly unevenness: number;
}

/** Draws what one plant bears. Counts must be more uneven than chance alone makes them: unevenness² · mean above 1. */
export function drawPlant({ kind, mean, unevenness }: PlantsAlike, source: RandomSource): number {
  if (kind === "gamma") return mean * unevenness ** 2 * standardGamma(unevenness ** -2, source);
  if (kind === "counts") return negativeBinomial({ mean, variance: (unevenness * mean) ** 2 }, source);
  const logVariance = Math.log1p(unevenness ** 2);
  return mean * Math.exp(Math.sqrt(logVariance) * standardNormal(source) - logVariance / 2);
}
