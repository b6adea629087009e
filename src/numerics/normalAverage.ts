import { density } from "./normal";

/** Where and how finely to add up. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/**
 * The integral of φ(z)·f(z) over a stretch outside of which it is negligible, φ being the standard normal density.
 *
 * Source: trapezoidal rule, which converges geometrically for such integrands: Trefethen & Weideman (2014), SIAM
 * Review 56, 385–458.
 */
export function normalAverage(f: (z: number) => number, { from, to, step }: Stretch): number {
  let sum = 0;
  for (let z = from; z <= to; z += step) sum += density(z) * f(z);
  return sum * step;
}

/**
 * A step fine enough for f a product of normal distribution functions with these slopes in z (1 for Φ(z)).
 * In the complex plane such a product grows like e^(slopes²·y²/2), so the rule's error is about
 * e^(−2π²/(step²·(1 + Σ slopes²))), here 1e-17.
 */
export function stepFor(sumOfSquaredSlopes: number): number {
  return 0.7 / Math.sqrt(1 + sumOfSquaredSlopes);
}
