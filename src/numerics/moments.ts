/** Size, average and spread of a sample. */
export interface Summary {
  readonly n: number;
  /** In the values' unit; NaN when n = 0. */
  readonly mean: number;
  /** With divisor n − 1, in the values' unit squared; NaN when n < 2. */
  readonly variance: number;
}

/**
 * The average of finite numbers; NaN for none.
 *
 * The first value is subtracted before summing, so that values far from zero but close together keep their digits.
 */
export function mean(x: readonly number[]): number {
  const first = x[0];
  if (first === undefined) return Number.NaN;
  const shifted = first + sumAround(x, first) / x.length;
  return shifted + sumAround(x, shifted) / x.length;
}

/**
 * The sample variance (divisor n − 1) of finite numbers; NaN for fewer than two; exactly 0 when all are equal.
 *
 * Two passes, with the correction for the rounding of the mean: Chan, Golub & LeVeque (1983), The American
 * Statistician 37, 242–247, equation 1.7.
 */
export function variance(x: readonly number[]): number {
  return varianceAround(x, mean(x));
}

function varianceAround(x: readonly number[], center: number): number {
  const n = x.length;
  if (n < 2) return Number.NaN;
  let squares = 0;
  for (let i = 0; i < n; i += 1) squares += ((x[i] ?? Number.NaN) - center) ** 2;
  return (squares - sumAround(x, center) ** 2 / n) / (n - 1);
}

/** The sample standard deviation (divisor n − 1), in the values' unit; NaN for fewer than two values. */
export function deviation(x: readonly number[]): number {
  return Math.sqrt(variance(x));
}

/** Size, mean and variance at once. */
export function summary(x: readonly number[]): Summary {
  const center = mean(x);
  return { n: x.length, mean: center, variance: varianceAround(x, center) };
}

function sumAround(x: readonly number[], center: number): number {
  let total = 0;
  // by index: once a page has summed arrays of several kinds, stepping through them by iterator takes 10 times as long
  for (let i = 0; i < x.length; i += 1) total += (x[i] ?? Number.NaN) - center;
  return total;
}
