import type { Known } from "../nouns/known";
import { type Summary, summary } from "../numerics/moments";
import { unevenness } from "./unevenness";

/** The plants of one treatment in figures; lengths are in the values' unit. */
export interface Description {
  readonly summary: Summary;
  readonly mean: Known;
  /** Standard deviation. */
  readonly deviation: Known;
  /** Standard deviation as a fraction of the average. */
  readonly unevenness: Known;
}

/** Describes any number of plants; an Absence stands where they are too few or their average is not above 0. */
export function describe(values: readonly number[]): Description {
  const group = summary(values);
  const none = { absent: "no-usable-plants" } as const;
  if (group.n === 0) {
    return { summary: group, mean: none, deviation: none, unevenness: none };
  }
  return {
    summary: group,
    mean: group.mean,
    deviation: group.n === 1 ? { absent: "one-plant-only" } : Math.sqrt(group.variance),
    unevenness: unevenness(group),
  };
}
