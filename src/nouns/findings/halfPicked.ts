import type { Caution } from "../caution";
import type { Known } from "../known";
import type { Lazy } from "../lazy";
import type { Place } from "../place";

/** One plant, and the day by which half of its own harvest was in. */
export interface HalfPlant {
  readonly plant: string;
  /** Days after the start; the words where there is no such day. */
  readonly day: number | "lost" | "no harvest" | "not recorded";
  /** The plant's first row. */
  readonly place: Place;
}

/** HALFPICKED's finding. The start is Excel's number. */
export interface HalfPicked {
  readonly finding: "half-picked";
  /** In order of appearance. */
  readonly plants: readonly HalfPlant[];
  readonly start: number;
  /** False when the start is the first date of the log. */
  readonly startGiven: boolean;
  /** False when no date names its year. */
  readonly yearsKnown: boolean;
  /** The average of the days. */
  readonly mean: Known;
  readonly cautions: Lazy<readonly Caution[]>;
}
