/** Stands in for a denominator that happens to be zero. */
const TINY = 1e-300;

/** A fraction that has not settled after this many steps gives NaN. */
const STEPS = 200_000;

/**
 * Value of b₀ + a₁/(b₁ + a₂/(b₂ + …)), from the front, by the modified Lentz method: Thompson & Barnett (1986),
 * Journal of Computational Physics 64, 490–509.
 *
 * @param a gives a₁, a₂ …
 * @param b gives b₀, b₁, b₂ …
 * @returns NaN when the fraction does not settle
 */
export function continuedFraction(a: (k: number) => number, b: (k: number) => number): number {
  let value = notZero(b(0));
  let numerator = value;
  let denominator = 0;
  for (let k = 1; k <= STEPS; k += 1) {
    const ak = a(k);
    const bk = b(k);
    denominator = 1 / notZero(bk + ak * denominator);
    numerator = notZero(bk + ak / numerator);
    const factor = numerator * denominator;
    value *= factor;
    if (Math.abs(factor - 1) <= 2 * Number.EPSILON) return value;
  }
  return Number.NaN;
}

function notZero(x: number): number {
  return x === 0 ? TINY : x;
}
