/**
 * The value below which about the share p of a sample lies, in the values' unit: type 7 of Hyndman & Fan (1996),
 * The American Statistician 50, 361–365, the default of R and of Excel's QUARTILE.INC and PERCENTILE.INC.
 *
 * @param x finite numbers in any order; the array is left as it is
 * @param p in [0, 1]
 * @returns NaN for no values, for a NaN among them and for p outside [0, 1]
 */
export function quantile(x: readonly number[], p: number): number {
  if (!(p >= 0 && p <= 1) || x.some(Number.isNaN)) return Number.NaN;
  const sorted = x.toSorted((left, right) => left - right);
  const position = (sorted.length - 1) * p;
  const below = sorted[Math.floor(position)] ?? Number.NaN;
  const above = sorted[Math.ceil(position)] ?? Number.NaN;
  return below + (position - Math.floor(position)) * (above - below);
}
