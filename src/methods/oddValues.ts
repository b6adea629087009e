import { median, medianAbsoluteDeviation } from "../numerics/median";

/** A value this many times the middle value is odd, for any number of plants. */
const TIMES_MIDDLE = 5;
/** A robust score beyond this is odd, from ENOUGH plants on. */
const HIGHEST_SCORE = 3.5;
const ENOUGH = 10;
/** The middle deviation of normal values is this share of their standard deviation. */
const NORMAL_SHARE = 0.6745;

/**
 * Which values of one treatment are far from the rest: at least five times the middle value (where that is above 0),
 * or with ten plants and more a robust score beyond 3.5 either way. When more than half the values are equal there is
 * no score.
 *
 * @returns indices, rising
 *
 * Source: Iglewicz & Hoaglin (1993), How to Detect and Handle Outliers, modified z-score 0.6745(x − median)/MAD.
 */
export function oddValues(values: readonly number[]): readonly number[] {
  const middle = median(values);
  const spread = values.length >= ENOUGH ? medianAbsoluteDeviation(values) : 0;
  const isOdd = (value: number) => {
    if (middle > 0 && value >= TIMES_MIDDLE * middle) return true;
    return spread > 0 && (NORMAL_SHARE * Math.abs(value - middle)) / spread > HIGHEST_SCORE;
  };
  return [...values.keys()].filter((index) => isOdd(values[index] ?? Number.NaN));
}
