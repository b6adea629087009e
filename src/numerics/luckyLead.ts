import { upperTail } from "./normal";

/** Two teams of plants that were all treated alike. */
export interface TwoTeams {
  /** Plants in each team, 1 or more. */
  readonly each: number;
  /** Standard deviation of a plant as a share of the average, above 0. */
  readonly unevenness: number;
}

/**
 * The chance that luck alone sets two teams so far apart that the leading one's average is ahead of the other's by
 * `lead` (a fraction, 0 or more) or further. Plants vary normally around one average; NaN outside the domain.
 *
 * The better average b beats (1 + lead) a when b − (1 + lead) a, which is normal, is above 0; either team may be the
 * better one. Averages below zero, which no harvest has, would count wrongly: they are out of reach while unevenness is
 * at most a quarter of √each.
 */
export function luckyLead({ each, unevenness }: TwoTeams, lead: number): number {
  if (!(each >= 1 && unevenness > 0 && lead >= 0)) return Number.NaN;
  const deviation = (unevenness / Math.sqrt(each)) * Math.hypot(1, 1 + lead);
  return 2 * upperTail(lead / deviation);
}
