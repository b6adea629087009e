import type { Caution } from "../caution";
import type { Lazy } from "../lazy";
import type { Problem } from "../problem";
import type { Reading } from "../reading";

/** One cell read into the unit asked for. */
export type PlainCell =
  | { readonly is: "number"; readonly value: number }
  | { readonly is: "lost" }
  | { readonly is: "empty" }
  | { readonly is: "refused"; readonly problem: Problem };

/** PLAINNUMBER's finding: a block of cells as plain numbers in one unit. */
export interface PlainNumbers {
  readonly finding: "plain-numbers";
  /** "g", or "count" for fruit. */
  readonly unit: string;
  /** In the shape of the cells given. */
  readonly cells: readonly (readonly PlainCell[])[];
  /** How many cells hold a plain number, a unit or a mark aside. */
  readonly numbers: number;
  /** Every cell that was more than a plain number. */
  readonly readings: readonly Reading[];
  readonly cautions: Lazy<readonly Caution[]>;
}
