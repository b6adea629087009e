import type { Caution } from "../caution";
import type { Lazy } from "../lazy";
import type { Place } from "../place";
import type { Unusable } from "../sample";

/** A label that stands beside a plant. */
export type BesideLabel = "treatment" | "bed";

/** Something about one plant's rows that a grower may want to look at. */
export type PickNote =
  | { readonly note: "lost"; readonly place: Place; readonly text: string }
  | { readonly note: "picked-later"; readonly amount: number }
  | { readonly note: "weight-missing"; readonly place: Place; readonly text: string; readonly why: Unusable }
  | { readonly note: "entered-twice"; readonly place: Place; readonly like: Place }
  | { readonly note: "far-above"; readonly place: Place; readonly amount: number }
  | { readonly note: "read-as"; readonly place: Place; readonly text: string; readonly amount: number }
  | { readonly note: "date-unclear"; readonly place: Place; readonly text: string }
  /** The name used comes first. */
  | {
      readonly note: "two-names";
      readonly of: BesideLabel;
      readonly names: readonly { readonly name: string; readonly rows: number }[];
    }
  | { readonly note: "listed-otherwise"; readonly of: BesideLabel; readonly listed: string; readonly logged: string }
  | { readonly note: "not-listed" };

/** How complete a plant's record is. */
export type PickStatus = "ok" | "lost" | "lost-picked-later" | "weight-missing";

/** One plant's picks added up. Days are Excel's numbers. */
export interface TalliedPlant {
  readonly plant: string;
  /** Null where none is known. */
  readonly treatment: string | null;
  readonly bed: string | null;
  readonly status: PickStatus;
  /** Rows of this plant in the log, 0 for one that was never picked. */
  readonly rows: number;
  /** All amounts that could be read, added up; also of a lost plant. In the tally's unit. */
  readonly picked: number;
  /** True when there are rows for this plant, but none with an amount that could be read. */
  readonly nothingRead: boolean;
  /** Rows on which something was picked, weighed or not. */
  readonly picks: number;
  readonly weightsMissing: number;
  readonly first: number | null;
  readonly last: number | null;
  readonly notes: readonly PickNote[];
}

/** A row that belongs to no plant. */
export interface RowLeftOut {
  readonly place: Place;
  readonly why: "no-label" | "total-row";
}

/** TALLYPICKS' finding: a pick log as one record per plant. */
export interface PickTally {
  readonly finding: "pick-tally";
  readonly unit: string | null;
  /** In order of *all_plants*, then of first appearance. */
  readonly plants: readonly TalliedPlant[];
  /** Rows that belong to a plant. */
  readonly rows: number;
  readonly leftOut: readonly RowLeftOut[];
  /** Whether treatments are known at all. */
  readonly withTreatments: boolean;
  /** False when no date names its year. */
  readonly yearsKnown: boolean;
  readonly cautions: Lazy<readonly Caution[]>;
}
