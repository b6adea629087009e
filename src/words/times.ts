import { shownPercent } from "./percent";
import { plainNumber } from "./plainNumber";

/** How many times the usual a change makes, from the same rounded figure as the percent shown: 2 gives "3". */
export function timesText(change: number): string {
  const { points } = shownPercent(change);
  return plainNumber(Number((1 + points / 100).toPrecision(12)), 3);
}

/** The slip of reading a percent as a number of times: 2 (+200 %) gives "2", from the rounded figure too. */
export function wrongTimesText(change: number): string {
  return plainNumber(shownPercent(change).points / 100, 3);
}

/** The percent of the usual that a change makes, often mistaken for the change: 2 gives "300 %". */
export function percentOfUsual(change: number): string {
  return `${plainNumber(100 + shownPercent(change).points, 1)} %`;
}

/** True when a change is so big that "times as much" is said beside the percent. */
export function worthTimes(change: number): boolean {
  return shownPercent(change).points >= 100;
}
