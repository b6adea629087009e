import { median, medianAbsoluteDeviation } from "../numerics/median";

/** A value this many times the middle value is odd, for any number of plants. */
const TIMES_MIDDLE = 5;
/** A robust score beyond this, on both scales, is odd from ENOUGH plants on: sound trials rarely reach it. */
const HIGHEST_SCORE = 5;
const ENOUGH = 10;
/** The middle deviation of normal values is this share of their standard deviation. */
const NORMAL_SHARE = 0.6745;

/**
 * Which values of one treatment are far from the rest: at least five times the middle value (where that is above 0),
 * or with ten plants and more a robust score beyond 5 either way, both of the values and of their logarithms: yields
 * lean to one side, so that sound plants often look far off on the one scale. Values not all above 0 have the plain
 * score alone. When more than half the values are equal there is no score.
 *
 * @returns indices, rising
 *
 * Source: Iglewicz & Hoaglin (1993), How to Detect and Handle Outliers, modified z-score 0.6745(x − median)/MAD; the
 * bar of 5 by simulation, tests/calibration/table.md.
 */
export function oddValues(values: readonly number[]): readonly number[] {
  const middle = median(values);
  const scores = values.length >= ENOUGH ? robustScores(values) : [];
  const logScores = values.every((value) => value > 0) ? robustScores(values.map(Math.log)) : null;
  const isFar = (index: number) => {
    const [score = 0, logScore] = [scores[index], logScores?.[index] ?? Number.POSITIVE_INFINITY];
    return Math.min(score, logScore) > HIGHEST_SCORE;
  };
  return [...values.entries()]
    .filter(([index, value]) => (middle > 0 && value >= TIMES_MIDDLE * middle) || isFar(index))
    .map(([index]) => index);
}

/** How far each value is from the middle one, in robust standard deviations; 0 where most are equal. */
function robustScores(values: readonly number[]): readonly number[] {
  const middle = median(values);
  const spread = medianAbsoluteDeviation(values);
  return values.map((value) => (spread > 0 ? (NORMAL_SHARE * Math.abs(value - middle)) / spread : 0));
}
