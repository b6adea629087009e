/** What a range of percent change says about a worthwhile change (METHODS 6.1), before plant numbers are looked at. */
export type RangeVerdict =
  | "up-enough"
  | "up-small"
  | "up-unclear"
  | "down-enough"
  | "down-small"
  | "down-unclear"
  | "level"
  | "open-up"
  | "open-down"
  | "open";

/** The verdict a grower reads: the range's, or what few plants allow at most. */
export type Verdict = RangeVerdict | "leaning-up" | "leaning-down" | "few" | "none";

/** The smallest change the grower would act on. */
export interface Worthwhile {
  /** Its size as a fraction above 0: 0.1 is 10 %. */
  readonly size: number;
  /** True when less is wanted (days, damage): the grower typed a negative change. */
  readonly lessWanted: boolean;
  /** False when the grower typed nothing and 10 % is taken. */
  readonly given: boolean;
}
