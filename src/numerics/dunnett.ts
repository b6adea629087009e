import * as normal from "./normal";
import { normalAverage, stepFor } from "./normalAverage";
import { remembered } from "./remembered";
import { falsePosition } from "./root";
import { scaledChiAverage } from "./scaledChi";
import { twoSidedCritical as studentTCritical, twoSidedTail as studentTTail } from "./studentT";

/**
 * P(max |Tᵢ| > d) for comparisons of several treatments with one control: Dunnett's two-sided p-value.
 *
 * The Tᵢ share one estimate of spread and have correlations λᵢλⱼ. In a one-way layout λᵢ = √(nᵢ/(nᵢ + n₀)), for any
 * counts. A few milliseconds a call; remembered.
 *
 * @param d 0 or more: the size of the comparison's t; 1 at 0
 * @param lambdas one for each comparison, each in (−1, 1)
 * @param df above 0, fractions welcome, Infinity included
 * @returns NaN outside the domain
 *
 * Source: C. W. Dunnett (1955), Journal of the American Statistical Association 50, 1096–1121; the product form for
 * unequal counts as in Dunnett (1989), Applied Statistics 38, 564–579. Both integrals by the trapezoidal rule.
 */
export const twoSidedTail: (d: number, lambdas: readonly number[], df: number) => number = remembered(
  (d, lambdas, df) => {
    if (!(d >= 0 && isDomain(lambdas, df))) return Number.NaN;
    if (d === Number.POSITIVE_INFINITY) return 0;
    if (lambdas.length === 1) return studentTTail(d, df);
    const kinds = alike(lambdas);
    return Math.min(
      1,
      scaledChiAverage((s) => someExceeds(d * s, kinds), df),
    );
  },
);

/**
 * The d that max |Tᵢ| exceeds with probability alpha: the multiplier of standard errors in Dunnett's ranges.
 * Remembered.
 *
 * @param alpha in (0, 1), such as 0.05; lambdas and df as for twoSidedTail
 * @returns NaN outside the domain
 */
export const twoSidedCritical: (alpha: number, lambdas: readonly number[], df: number) => number = remembered(
  (alpha, lambdas, df) => {
    if (!(alpha > 0 && alpha < 1 && isDomain(lambdas, df))) return Number.NaN;
    // one comparison is too lenient, Bonferroni's share for each too strict
    const low = studentTCritical(alpha, df);
    if (lambdas.length === 1) return low;
    const high = studentTCritical(alpha / lambdas.length, df);
    const excess = (logD: number) => Math.log(twoSidedTail(Math.exp(logD), lambdas, df) / alpha);
    return Math.exp(falsePosition(excess, Math.log(low), Math.log(high), 1e-13));
  },
);

function isDomain(lambdas: readonly number[], df: number): boolean {
  return lambdas.length > 0 && lambdas.every((lambda) => Math.abs(lambda) < 1) && df > 0;
}

/** Comparisons of equal correlation are worked out once. */
interface Kind {
  readonly lambda: number;
  readonly own: number;
  readonly count: number;
}

function alike(lambdas: readonly number[]): Kind[] {
  const counts = new Map<number, number>();
  for (const lambda of lambdas) counts.set(Math.abs(lambda), (counts.get(Math.abs(lambda)) ?? 0) + 1);
  return [...counts].map(([lambda, count]) => ({ lambda, own: Math.sqrt((1 - lambda) * (1 + lambda)), count }));
}

/** P(max |λᵢz + √(1 − λᵢ²)·Zᵢ| > w) for independent standard normal z and Zᵢ; only z ≥ 0 is added up, twice. */
function someExceeds(w: number, kinds: readonly Kind[]): number {
  const slopes = kinds.reduce((sum, { lambda, own, count }) => sum + count * (lambda / own) ** 2, 0);
  const step = stepFor(slopes);
  const outside = (z: number) => {
    let logInside = 0;
    for (const { lambda, own, count } of kinds) {
      const beyond = normal.upperTail((w - lambda * z) / own) + normal.upperTail((w + lambda * z) / own);
      logInside += count * Math.log1p(-beyond);
    }
    return -Math.expm1(logInside);
  };
  return 2 * normalAverage(outside, { from: step / 2, to: Math.max(8.5, w + 5.5), step });
}
