import { guessNormal } from "./jstat";
import { solveInLogs } from "./solveInLogs";

const SQRT_TWO_PI = Math.sqrt(2 * Math.PI);

/** Step of the trapezoidal sum; its error is e^(−2π²/step²), below 1e-17. */
const STEP = 0.7;

/** Squares of the nodes 0.7, 1.4 … and the weights e^(−node²/2) there; the next weight is below 1e-17. */
const NODES = Array.from({ length: 12 }, (_, index) => {
  const square = ((index + 1) * STEP) ** 2;
  return { square, weight: 2 * Math.exp(-square / 2) };
});

/** The share of a standard normal variable below z; NaN for NaN. */
export function lowerTail(z: number): number {
  return upperTail(-z);
}

/**
 * The share of a standard normal variable above z, to full relative accuracy as far as doubles reach (z = 38).
 *
 * Source: near 0 the series DLMF 7.6.2; elsewhere the integral DLMF 7.7.1 by the trapezoidal rule with the pole's
 * share taken off: Matta & Reichel (1971), Mathematics of Computation 25, 339–344.
 */
export function upperTail(z: number): number {
  if (Math.abs(z) < STEP) return 0.5 - fromCenter(z);
  if (z < 0) return 1 - farTail(-z);
  return farTail(z);
}

/** The standard normal density at z. */
export function density(z: number): number {
  // z² is split so that its rounding does not grow in the exponential
  const coarse = Math.round(z * 16) / 16;
  return (Math.exp((-coarse * coarse) / 2) * Math.exp(((coarse - z) * (coarse + z)) / 2)) / SQRT_TWO_PI;
}

/**
 * The z below which the share p lies; −∞ at 0, ∞ at 1, NaN outside [0, 1].
 *
 * Source: jstat's guess, then Newton's method on the tail, or on the area from the middle when p is near ½.
 */
export function quantile(p: number): number {
  if (!(p >= 0 && p <= 1)) return Number.NaN;
  if (p === 0.5) return 0;
  return p < 0.5 ? -exceededBy(p) : exceededBy(1 - p);
}

/** The quantile as jstat guesses it, for a first guess at half the time; p in (0, 1). */
export function nearQuantile(p: number): number {
  return p < 0.5 ? -guessNormal(p) : guessNormal(1 - p);
}

function exceededBy(upper: number): number {
  if (upper === 0) return Number.POSITIVE_INFINITY;
  const guess = guessNormal(upper);
  if (upper < 0.3)
    return solveInLogs({ area: upper, rising: false }, guess, (z) => ({ area: upperTail(z), growth: -z * density(z) }));
  return solveInLogs({ area: 0.5 - upper, rising: true }, guess, (z) => ({
    area: fromCenter(z),
    growth: z * density(z),
  }));
}

/** The area between 0 and z: φ(z)(z + z³/3 + z⁵/(3·5) + …). */
function fromCenter(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > Math.abs(sum) * (Number.EPSILON / 8); odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return density(z) * sum;
}

function farTail(z: number): number {
  if (z > 40) return 0;
  let sum = 1 / (z * z);
  for (const { square, weight } of NODES) sum += weight / (square + z * z);
  const trapezoid = (STEP * z * density(z) * sum) / SQRT_TWO_PI;
  // beyond this the pole lies outside the strip where the sum is exact
  return z > 8 ? trapezoid : trapezoid - 1 / Math.expm1((2 * Math.PI * z) / STEP);
}
