import type { RandomSource } from "../../../src/numerics/random";
import { standardNormal } from "./standardNormal";

/**
 * Draws a gamma value of scale 1.
 *
 * @param shape 1 or more
 *
 * Source: G. Marsaglia & W. W. Tsang (2000), ACM Transactions on Mathematical Software 26, 363–372.
 */
export function standardGamma(shape: number, source: RandomSource): number {
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = standardNormal(source);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - source.uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}
