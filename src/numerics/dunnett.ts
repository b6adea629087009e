import * as normal from "./normal";
import { normalAverage, stepFor } from "./normalAverage";
import { type Studentized, studentized } from "./studentized";
import { twoSidedCritical, twoSidedTail } from "./studentT";

/**
 * The distribution of max |Tᵢ| for comparisons of several treatments with one control: tail(d, df) is Dunnett's
 * two-sided p-value, critical(alpha, df) the multiplier of standard errors in his ranges.
 *
 * The Tᵢ share one estimate of spread and have correlations λᵢλⱼ. In a one-way layout λᵢ = √(nᵢ/(nᵢ + n₀)), for any
 * counts. The first answer takes a fraction of a millisecond, further ones of the same distribution much less.
 *
 * @param lambdas one for each comparison, each in (−1, 1); outside of that domain all answers are NaN
 * @returns as studentized.ts says, but NaN for d below 0
 *
 * Source: C. W. Dunnett (1955), Journal of the American Statistical Association 50, 1096–1121; the product form for
 * unequal counts as in Dunnett (1989), Applied Statistics 38, 564–579. Both integrals by the trapezoidal rule.
 */
export function dunnett(lambdas: readonly number[]): Studentized {
  const comparisons = lambdas.length;
  const isDomain = comparisons > 0 && lambdas.every((lambda) => Math.abs(lambda) < 1);
  const { tail, critical } = comparisons === 1 ? studentT : joint(lambdas);
  return {
    tail: (d, df) => (isDomain && d >= 0 ? tail(d, df) : Number.NaN),
    critical: (alpha, df) => (isDomain && alpha > 0 && alpha < 1 ? critical(alpha, df) : Number.NaN),
  };
}

const studentT: Studentized = { tail: twoSidedTail, critical: twoSidedCritical };

function joint(lambdas: readonly number[]): Studentized {
  const kinds = alike(lambdas);
  return studentized({
    exceeds: (w) => someExceeds(w, kinds),
    // as if they were independent, which is a little too strict
    guess: (alpha, df) => twoSidedCritical(-Math.expm1(Math.log1p(-alpha) / lambdas.length), df),
  });
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
