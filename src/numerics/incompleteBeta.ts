import { continuedFraction } from "./continuedFraction";
import { deviance, stirlingError } from "./saddlePoint";
import { fromLower, fromUpper, type Tails } from "./tails";

/** A point x of [0, 1] and what is left of 1: both are asked for, so that neither end loses digits. */
export interface Split {
  readonly x: number;
  /** 1 − x, computed without cancellation. */
  readonly y: number;
}

/** The two parameters of a beta distribution, both above 0. */
export interface Shape {
  readonly a: number;
  readonly b: number;
}

/**
 * The regularized incomplete beta function I_x(a, b), the share of a Beta(a, b) variable below x, and its complement.
 *
 * @param split the point x in [0, 1] and 1 − x
 * @param kernel betaKernel of the same, where it is known already
 * @returns NaN twice outside the domain
 *
 * Source: continued fraction DLMF 8.17.22 in the contracted form of DiDonato & Morris (1992), ACM Transactions on
 * Mathematical Software 18, 360–373, equation 9, on the side of the mean where it converges fast; betaKernel in front.
 */
export function betaTails(split: Split, shape: Shape, kernel = betaKernel(split, shape)): Tails {
  const { x, y } = split;
  const { a, b } = shape;
  if (!(x >= 0 && y >= 0 && a > 0 && b > 0)) return fromLower(Number.NaN);
  if (x === 0) return fromLower(0);
  if (y === 0) return fromUpper(0);
  if (x * (a + b + 2) <= a + 1) return fromLower(shareBelow(split, shape, kernel));
  return fromUpper(shareBelow({ x: y, y: x }, { a: b, b: a }, kernel));
}

/** x^a · y^b / B(a, b) for x + y = 1, without overflow or cancellation: Loader's saddle-point form. */
export function betaKernel({ x, y }: Split, { a, b }: Shape): number {
  const n = a + b;
  const exponent = stirlingError(n) - stirlingError(a) - stirlingError(b) - deviance(a, n * x) - deviance(b, n * y);
  return Math.sqrt(((a / n) * b) / (2 * Math.PI)) * Math.exp(exponent);
}

/** I_x(a, b) for x below the mean. */
function shareBelow({ x, y }: Split, { a, b }: Shape, kernel: number): number {
  if (kernel === 0) return 0;
  // how far x lies below the mean, times a + b; as (a + b)y − b it keeps its digits when x is close to 1
  const distance = y < x ? (a + b) * y - b : a - (a + b) * x;
  const numerator = (n: number) => {
    const ratio = x / (a + 2 * n - 1);
    return (a + n - 1) * (a + b + n - 1) * n * (b - n) * ratio * ratio;
  };
  const denominator = (n: number) => {
    const last = ((a + n) / (a + 2 * n + 1)) * (distance + 1 + n * (1 + y));
    return n === 0 ? last : n + (n * (b - n) * x) / (a + 2 * n - 1) + last;
  };
  return kernel / continuedFraction(numerator, denominator);
}
