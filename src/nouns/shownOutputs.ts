import type { LineFormat, Outputs } from "./line";

/** How each cell of a block is best shown, row by row. */
export type Formats = readonly (readonly LineFormat[])[];

/** A block of results with the way each of its cells is best shown; both have the same shape. */
export interface ShownOutputs {
  readonly outputs: Outputs;
  readonly formats: Formats;
}
