import type { Caution } from "../caution";
import type { Lazy } from "../lazy";
import type { Reading } from "../reading";

/** LOOKOVER's finding: what was made of every cell that does not simply say its number, date or name. */
export interface LookedOver {
  readonly finding: "looked-over";
  /** How many cells were looked at, headings and columns of notes aside; 0 when there is nothing in them. */
  readonly cells: number;
  /** How many of them hold an amount that was read. */
  readonly numbers: number;
  /** How many different cells need a look. */
  readonly needLook: number;
  /** By place, row by row. */
  readonly readings: readonly Reading[];
  readonly cautions: Lazy<readonly Caution[]>;
}
