/**
 * The two building blocks of Loader's saddle-point form of densities, which keep their digits where powers and gamma
 * functions of large numbers would cancel: C. Loader (2000), "Fast and accurate computation of binomial probabilities".
 */

/** Coefficients of 1/x, 1/x³, 1/x⁵ … in ln Γ(x): DLMF 5.11.1, B₂ₖ/(2k(2k − 1)). */
const SERIES = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156, -3617 / 122400];

/** From here on the series above is good to the last digit of a double. */
const SERIES_FROM = 12;

/**
 * What Stirling's formula leaves out: ln Γ(x) − [(x − ½) ln x − x + ½ ln 2π], for x > 0 (falls from ∞ to 0).
 * Small x climb to the series by Γ(x + 1) = xΓ(x); every step adds a positive amount, so nothing cancels.
 */
export function stirlingError(x: number): number {
  let climbed = 0;
  let at = x;
  for (; at < SERIES_FROM; at += 1) climbed += (at + 0.5) * Math.log1p(1 / at) - 1;
  const square = 1 / (at * at);
  return climbed + SERIES.reduceRight((sum, coefficient) => sum * square + coefficient, 0) / at;
}

/** Loader's deviance term bd0: x ln(x/m) + m − x for x, m ≥ 0; never negative, 0 when x = m. */
export function deviance(x: number, m: number): number {
  if (x === 0 || m === 0) return x === 0 ? m : Number.POSITIVE_INFINITY;
  const apart = x - m;
  if (!(Math.abs(apart) < 0.1 * (x + m))) return x * Math.log(x / m) - apart;
  const v = apart / (x + m);
  let power = 2 * x * v;
  let sum = apart * v;
  for (let odd = 3; ; odd += 2) {
    power *= v * v;
    const next = sum + power / odd;
    if (next === sum) return sum;
    sum = next;
  }
}
