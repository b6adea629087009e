import { betaRatioQuantile } from "../numerics/betaQuantile";

/** A total over a treatment's plants, and how many they are; plants 1 or more. */
export interface TotalOfPlants {
  readonly total: number;
  readonly plants: number;
}

/** The two ends of a range of new per plant over usual per plant; high may be Infinity. */
export interface RatioRange {
  readonly low: number;
  readonly high: number;
}

/**
 * The exact range of the ratio of two counts per plant, if nothing but the luck of counting were at work.
 *
 * Given both counts together, the new one is binomial; the range is Clopper and Pearson's for its share. A count of 0
 * leaves one end open: 0 below, Infinity above.
 *
 * @param usual and tried: whole totals of 0 or more
 * @param confidence in (0, 1); each end misses half of the rest
 * @returns NaN ends for two totals of 0
 *
 * Source: C. J. Clopper and E. S. Pearson (1934), Biometrika 26, 404–413; checked against R's poisson.test().
 */
export function countRatio(usual: TotalOfPlants, tried: TotalOfPlants, confidence: number): RatioRange {
  const [before, after] = [usual.total, tried.total];
  if (before === 0 && after === 0) return { low: Number.NaN, high: Number.NaN };
  const share = (1 - confidence) / 2;
  const perPlants = usual.plants / tried.plants;
  const low = after === 0 ? 0 : oddsBelow("lower", share, { a: after, b: before + 1 });
  const high = before === 0 ? Number.POSITIVE_INFINITY : oddsBelow("upper", share, { a: after + 1, b: before });
  return { low: low * perPlants, high: high * perPlants };
}

/** The odds that leave the share on the named side of a beta variable. */
function oddsBelow(side: "lower" | "upper", share: number, shape: { readonly a: number; readonly b: number }): number {
  return betaRatioQuantile({ side, share }, shape, shape.a / shape.b);
}
