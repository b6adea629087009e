import { quantile } from "./quantile";

/** The middle value, or the middle of the two middle values, in the values' unit; NaN for no values or a NaN. */
export function median(x: readonly number[]): number {
  return quantile(x, 0.5);
}

/**
 * The middle distance from the middle value, in the values' unit, not scaled to match a standard deviation
 * (R's `mad(x, constant = 1)`); NaN for no values.
 */
export function medianAbsoluteDeviation(x: readonly number[]): number {
  const center = median(x);
  return median(x.map((value) => Math.abs(value - center)));
}
