import { betaTails } from "./incompleteBeta";
import { fromLower, type Tails } from "./tails";

/**
 * P(X ≤ k) for X successes in n trials of chance p.
 *
 * @param k any number, rounded down to a whole one
 * @param n whole, 0 or more
 * @param p in [0, 1]
 * @returns NaN outside the domain
 *
 * Source: DLMF 8.17.5, P(X ≤ k) = I_{1−p}(n − k, k + 1).
 */
export function lowerTail(k: number, n: number, p: number): number {
  return tails(k, n, p).lower;
}

/** P(X > k), the complement of lowerTail with its own relative accuracy. */
export function upperTail(k: number, n: number, p: number): number {
  return tails(k, n, p).upper;
}

function tails(k: number, n: number, p: number): Tails {
  if (Number.isNaN(k) || !(Number.isInteger(n) && n >= 0 && p >= 0 && p <= 1)) return fromLower(Number.NaN);
  if (k < 0) return fromLower(0);
  if (k >= n) return fromLower(1);
  const whole = Math.floor(k);
  return betaTails({ x: 1 - p, y: p }, { a: n - whole, b: whole + 1 });
}
