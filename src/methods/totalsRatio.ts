import * as normal from "../numerics/normal";
import type { RatioRange, TotalOfPlants } from "./countRatio";

/** What is taken of the plants behind two totals. */
export interface TakenOfPlants {
  /** Standard deviation between plants treated alike, as a fraction of their average. */
  readonly unevenness: number;
  /** True for counts, which the luck of counting spreads even where all plants are alike. */
  readonly counts: boolean;
  /** The share of such ranges that would hold the true ratio, in (0, 1). */
  readonly confidence: number;
}

/**
 * The range of new per plant over usual per plant when single plants are taken to differ by so much: on the log scale,
 * with a normal quantile. A count's variance is its Poisson variance times φ = max(1, unevenness² × count per plant).
 *
 * @param usual and tried: totals above 0
 *
 * Source: the over-dispersed Poisson of P. McCullagh and J. A. Nelder (1989), Generalized Linear Models, section 6.2,
 * its dispersion not measured but taken from the unevenness.
 */
export function totalsRatio(usual: TotalOfPlants, tried: TotalOfPlants, taken: TakenOfPlants): RatioRange {
  const logRatio = Math.log(perPlant(tried) / perPlant(usual));
  const reach = twoSided(taken.confidence) * Math.sqrt(logVariance(usual, taken) + logVariance(tried, taken));
  return { low: Math.exp(logRatio - reach), high: Math.exp(logRatio + reach) };
}

/**
 * The unevenness below which the gap between two totals stands out, were it the only cause of luck.
 *
 * @param usual and tried: totals above 0
 * @returns a fraction, 0 or more
 */
export function unevennessToBeReal(usual: TotalOfPlants, tried: TotalOfPlants, confidence: number): number {
  const spreadOfOne = Math.sqrt(1 / usual.plants + 1 / tried.plants);
  return Math.abs(Math.log(perPlant(tried) / perPlant(usual))) / (twoSided(confidence) * spreadOfOne);
}

/** What each plant of a total gave on average, in the total's unit. */
export function perPlant({ total, plants }: TotalOfPlants): number {
  return total / plants;
}

/** Variance of a total's logarithm; for counts never below that of counting, 1 over the count. */
function logVariance({ total, plants }: TotalOfPlants, { unevenness, counts }: TakenOfPlants): number {
  const fromPlants = unevenness ** 2 / plants;
  return counts ? Math.max(1 / total, fromPlants) : fromPlants;
}

function twoSided(confidence: number): number {
  return -normal.quantile((1 - confidence) / 2);
}
