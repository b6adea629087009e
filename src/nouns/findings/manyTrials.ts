import type { Caution } from "../caution";
import type { Limits } from "../known";
import type { Lazy } from "../lazy";
import type { Place } from "../place";
import type { Verdict, Worthwhile } from "../verdict";

/** One season, place or crop: its two averages. */
export interface Trial {
  /** As the names have it; null where there is none. */
  readonly name: string | null;
  readonly usual: number;
  readonly tried: number;
  /** As a fraction of the usual. */
  readonly change: number;
  readonly place: Place;
}

/** MANYTRIALS' finding: what several trials of one comparison say together. Changes are fractions of the usual. */
export interface ManyTrials {
  readonly finding: "many-trials";
  readonly names: { readonly usual: string | null; readonly tried: string | null };
  /** What one row is, by the heading of its names. */
  readonly rowIs: "trial" | "season" | "crop";
  readonly trials: readonly Trial[];
  /** Rows without two averages above 0. */
  readonly leftOut: readonly Place[];
  readonly change: number;
  readonly changeRange: Limits;
  readonly verdict: Verdict;
  readonly worthwhile: Worthwhile;
  /** Trials in which the new gave more. */
  readonly ahead: number;
  readonly behind: number;
  readonly cautions: Lazy<readonly Caution[]>;
}
