import type { RandomSource } from "../../../src/numerics/random";

/**
 * Draws a standard normal value.
 *
 * Source: G. Marsaglia & T. A. Bray (1964), SIAM Review 6, 260–264 (the polar method; its second value is let go, so
 * that nothing is kept between draws).
 */
export function standardNormal(source: RandomSource): number {
  for (;;) {
    const [x, y] = [2 * source.uniform() - 1, 2 * source.uniform() - 1];
    const square = x * x + y * y;
    if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
  }
}
