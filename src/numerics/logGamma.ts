import { stirlingError } from "./saddlePoint";

const HALF_LOG_TWO_PI = Math.log(2 * Math.PI) / 2;

/**
 * Natural logarithm of the gamma function; NaN for x ≤ 0.
 *
 * Stirling's formula with its correction, DLMF 5.11.1. The absolute error is a few units in the last place of
 * x ln x, so near the zeros at 1 and 2 only absolute accuracy (1e-15) is promised.
 */
export function logGamma(x: number): number {
  if (!(x > 0)) return Number.NaN;
  if (x === Number.POSITIVE_INFINITY) return x;
  return (x - 0.5) * Math.log(x) - x + HALF_LOG_TWO_PI + stirlingError(x);
}
