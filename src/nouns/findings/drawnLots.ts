import type { Caution } from "../caution";
import type { Lazy } from "../lazy";

/** One spot of a plan. */
export interface Spot {
  /** From 1, counted in each bed; without beds over all. */
  readonly spot: number;
  /** From 1; null without beds. */
  readonly bed: number | null;
  readonly treatment: string;
  /** What goes on the stake: "B3-2" for bed 3, spot 2; "P7" without beds. */
  readonly label: string;
}

/** DRAWLOTS' finding: which plant gets what, drawn by lot. */
export interface DrawnLots {
  readonly finding: "drawn-lots";
  readonly treatments: readonly string[];
  readonly plantsEach: number;
  /** Null for separate plants. */
  readonly beds: number | null;
  /** Null while no number was given: then nothing is drawn. */
  readonly drawNumber: number | null;
  /** Bed by bed, spot by spot; empty while nothing is drawn. */
  readonly spots: readonly Spot[];
  readonly cautions: Lazy<readonly Caution[]>;
}
