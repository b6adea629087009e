import { percentSize, shownPercent } from "./percent";
import { timesText, worthTimes } from "./times";

/**
 * A change against the usual, without a sign: "44 % more", "14 % less", and from 100 % on with the times as much,
 * "200 % more (3 times as much)". Null when it rounds to no change at all.
 */
export function moreOrLess(change: number): string | null {
  const { points } = shownPercent(change);
  if (points === 0) return null;
  const size = percentSize(change);
  if (points < 0) return `${size} less`;
  return worthTimes(change) ? `${size} more (${timesText(change)} times as much)` : `${size} more`;
}
