import type { Known } from "../nouns/known";
import { median } from "../numerics/median";

/** The plants in the middle and at the ends of one treatment, in the values' unit. */
export interface MiddleAndEnds {
  readonly median: Known;
  readonly lowest: Known;
  readonly highest: Known;
}

/** Middle and ends of any number of plants; an Absence stands where there is none. */
export function middleAndEnds(values: readonly number[]): MiddleAndEnds {
  if (values.length === 0) {
    const none = { absent: "no-usable-plants" } as const;
    return { median: none, lowest: none, highest: none };
  }
  return {
    median: median(values),
    lowest: values.reduce((least, value) => Math.min(least, value)),
    highest: values.reduce((most, value) => Math.max(most, value)),
  };
}
