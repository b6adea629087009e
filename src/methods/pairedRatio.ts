import { mean, summary, variance } from "../numerics/moments";
import { twoSidedCritical } from "../numerics/studentT";
import { type RatioCurve, steadyRatio } from "./ratioCurve";

/**
 * The ratio test for pairs: the paired t test of new − r·usual.
 *
 * @param usual and tried: two complete pairs or more
 * @param confidence in (0, 1)
 *
 * Source: Fieller (1954), see ratioCurve.ts.
 */
export function pairedRatio(usual: readonly number[], tried: readonly number[], confidence: number): RatioCurve {
  const n = usual.length;
  const { mean: usualMean, variance: usualVariance } = summary(usual);
  const triedMean = mean(tried);

  // deviations from the line through the averages: around them var(new − r·usual) loses no digits even when pairs
  // follow each other closely
  const seen = triedMean / usualMean;
  const strays = usual.map((value, pair) => (tried[pair] ?? Number.NaN) - seen * value);
  const strayVariance = variance(strays);
  const together = covariance(strays, usual);
  const varianceAt = (ratio: number) => {
    const turn = seen - ratio;
    return Math.max(0, strayVariance + turn * (2 * together + turn * usualVariance)) / n;
  };
  const critical = twoSidedCritical(1 - confidence, n - 1);
  return steadyRatio({ usualMean, triedMean, critical, varianceAt, usualVariance: usualVariance / n });
}

function covariance(x: readonly number[], y: readonly number[]): number {
  const [xMean, yMean] = [mean(x), mean(y)];
  let products = 0;
  for (const [i, value] of x.entries()) products += (value - xMean) * ((y[i] ?? Number.NaN) - yMean);
  return products / (x.length - 1);
}
