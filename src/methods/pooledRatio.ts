import type { Summary } from "../numerics/moments";
import { twoSidedCritical } from "../numerics/studentT";
import { type RatioCurve, steadyRatio } from "./ratioCurve";
import { pooledVariance } from "./studentPooled";

/**
 * The ratio test for separate plants that vary equally: Student's test of new − r·usual.
 *
 * @param usual and tried: two plants or more each
 * @param confidence in (0, 1)
 *
 * Source: Fieller (1954), see ratioCurve.ts.
 */
export function pooledRatio(usual: Summary, tried: Summary, confidence: number): RatioCurve {
  const variance = pooledVariance([usual, tried]);
  return steadyRatio({
    usualMean: usual.mean,
    triedMean: tried.mean,
    critical: twoSidedCritical(1 - confidence, usual.n + tried.n - 2),
    varianceAt: (ratio) => variance * (1 / tried.n + ratio ** 2 / usual.n),
    usualVariance: variance / usual.n,
  });
}
