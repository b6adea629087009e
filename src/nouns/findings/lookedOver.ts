import type { Caution } from "../caution";
import type { Lazy } from "../lazy";
import type { Reading } from "../reading";

/** One column of the cells, as LOOKOVER read it. */
export interface ReadColumn {
  /** Its place among the columns given, from 1. */
  readonly column: number;
  readonly kind: "amount" | "date" | "label";
  readonly heading: string | null;
  /** The unit its amounts are in; null where nobody named one, and for dates and names. */
  readonly unit: string | null;
  readonly unitInHeading: boolean;
  /**
   * What each row below the heading was read as: an amount, or a day by Excel's number; NaN where nothing was read for
   * certain. Null for names, and for dates of which none names its year.
   */
  readonly values: Float64Array | null;
}

/** LOOKOVER's finding: what was made of every cell that does not simply say its number, date or name. */
export interface LookedOver {
  readonly finding: "looked-over";
  /** How many cells were looked at, headings and columns of notes aside; 0 when there is nothing in them. */
  readonly cells: number;
  /** How many of them hold an amount that was read. */
  readonly numbers: number;
  /** How many different cells need a look. */
  readonly needLook: number;
  /** How many rows stand above the first one read: 1 with a heading row. */
  readonly from: number;
  /** Those that were read: columns of notes and empty ones are not among them. */
  readonly columns: readonly ReadColumn[];
  /** By place, row by row. */
  readonly readings: readonly Reading[];
  readonly cautions: Lazy<readonly Caution[]>;
}
