import type { Known } from "../nouns/known";
import { median } from "../numerics/median";
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
  readonly median: Known;
  readonly lowest: Known;
  readonly highest: Known;
}

/** Describes any number of plants; an Absence stands where they are too few or their average is not above 0. */
export function describe(values: readonly number[]): Description {
  const group = summary(values);
  const none = { absent: "no-usable-plants" } as const;
  if (group.n === 0) {
    return { summary: group, mean: none, deviation: none, unevenness: none, median: none, lowest: none, highest: none };
  }
  return {
    summary: group,
    mean: group.mean,
    deviation: group.n === 1 ? { absent: "one-plant-only" } : Math.sqrt(group.variance),
    unevenness: unevenness(group),
    median: median(values),
    lowest: values.reduce((least, value) => Math.min(least, value)),
    highest: values.reduce((most, value) => Math.max(most, value)),
  };
}
