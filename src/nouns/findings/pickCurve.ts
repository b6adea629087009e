import type { Caution } from "../caution";
import type { Lazy } from "../lazy";

/** One treatment's harvest as it came in. */
export interface TreatmentCurve {
  readonly name: string;
  /** Number of plants set out; null where it is not known, so that amounts are totals. */
  readonly setOut: number | null;
  /** What had come in by each step, per plant set out or as a total; in the finding's unit. */
  readonly running: readonly number[];
  /** The share of the last seven days, a fraction; null for a treatment without harvest. */
  readonly lastWeek: number | null;
  /** Days after the first pick of all by which half of it was in; null without harvest. */
  readonly halfBy: number | null;
}

/** PICKCURVE's finding: the running harvest of each treatment. Days are Excel's numbers. */
export interface PickCurve {
  readonly finding: "pick-curve";
  readonly unit: string | null;
  /** In order of appearance. */
  readonly treatments: readonly TreatmentCurve[];
  /** The last day of each step, rising: every so many days from the first pick, and the last pick. */
  readonly steps: readonly number[];
  /** False for totals. */
  readonly perPlant: boolean;
  /** False when no date names its year. */
  readonly yearsKnown: boolean;
  /** Rows that belong to no treatment or have no certain date. */
  readonly leftOut: number;
  /** Rows whose amount could not be read. */
  readonly weightsMissing: number;
  readonly cautions: Lazy<readonly Caution[]>;
}
