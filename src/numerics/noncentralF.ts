import { betaKernel, betaTails, type Shape, type Split } from "./incompleteBeta";
import { gammaKernel } from "./incompleteGamma";

/**
 * P(F > f) for a non-central F: the power of an F test.
 *
 * @param f 0 or more
 * @param df degrees of freedom above and below the line, each above 0 and finite
 * @param ncp non-centrality, 0 or more
 * @returns NaN outside the domain
 *
 * Source: the Poisson mixture of central tails as arranged by Benton & Krishnamoorthy (2003), Computational Statistics
 * & Data Analysis 43, 249–267, but walked upward only: every term and every step is positive, so nothing cancels.
 */
export function upperTail(f: number, df: readonly [number, number], ncp: number): number {
  if (!(f >= 0 && df.every(finiteAbove0) && ncp >= 0 && ncp < Number.POSITIVE_INFINITY)) return Number.NaN;
  const [d1, d2] = df;
  const above = d1 * f;
  if (above === Number.POSITIVE_INFINITY) return 0;
  const split = { x: d2 / (d2 + above), y: above / (d2 + above) };
  return Math.min(1, mixture(split, { a: d2 / 2, b: d1 / 2 }, ncp / 2));
}

/** Σ Poisson(j; rate) · I_x(a, b + j). */
function mixture(split: Split, { a, b }: Shape, rate: number): number {
  // counts below this have a Poisson share, and a smaller tail each, that cannot show in the sum
  const first = Math.max(0, Math.floor(rate - 9 * Math.sqrt(rate) - 9));
  let share = poissonShare(first, rate);
  const shape = { a, b: b + first };
  const kernel = split.y === 0 ? 0 : betaKernel(split, shape);
  let tail = betaTails(split, shape, kernel).lower;
  let rise = kernel / shape.b;
  let sum = 0;
  for (let j = first; ; j += 1) {
    sum += share * tail;
    tail += rise;
    rise *= (split.y * (a + b + j)) / (b + j + 1);
    share *= rate / (j + 1);
    const restAtMost = share / (1 - rate / (j + 2));
    if (j + 2 > rate && !(restAtMost > 1e-17 * sum)) return sum;
  }
}

/** e^−rate · rate^j / j! */
function poissonShare(j: number, rate: number): number {
  if (j === 0) return Math.exp(-rate);
  return gammaKernel(j, rate) / j;
}

function finiteAbove0(df: number): boolean {
  return df > 0 && df < Number.POSITIVE_INFINITY;
}
