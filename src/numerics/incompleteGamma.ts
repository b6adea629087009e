import { continuedFraction } from "./continuedFraction";
import { deviance, stirlingError } from "./saddlePoint";
import { fromLower, fromUpper, type Tails } from "./tails";

/**
 * The regularized incomplete gamma functions P(a, x), the share of a Gamma(a) variable below x, and Q(a, x) above it.
 *
 * @param a shape, above 0
 * @param x 0 or more
 * @returns NaN twice outside the domain
 *
 * Source: series DLMF 8.11.4 below a + 1, continued fraction DLMF 8.9.2 (contracted) above.
 */
export function gammaTails(a: number, x: number): Tails {
  if (!(a > 0 && x >= 0)) return fromLower(Number.NaN);
  if (x === 0) return fromLower(0);
  if (x === Number.POSITIVE_INFINITY) return fromUpper(0);
  if (x < a + 1) return fromLower((gammaKernel(a, x) / a) * series(a, x));
  const fraction = continuedFraction(
    (k) => k * (a - k),
    (k) => x + 1 - a + 2 * k,
  );
  return fromUpper(gammaKernel(a, x) / fraction);
}

/** x^a · e^−x / Γ(a), without overflow or cancellation: Loader's saddle-point form. */
export function gammaKernel(a: number, x: number): number {
  return Math.sqrt(a / (2 * Math.PI)) * Math.exp(-stirlingError(a) - deviance(a, x));
}

/** 1 + x/(a + 1) + x²/((a + 1)(a + 2)) + … */
function series(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; term > sum * (Number.EPSILON / 8); k += 1) {
    term *= x / (a + k);
    sum += term;
  }
  return sum;
}
