/** The picks of a log, one a row. */
export interface Picks {
  /** Who bore it, numbered from 0; −1 for a row of nobody. */
  readonly owners: Int32Array;
  /** The amount; NaN where none is known. */
  readonly amounts: Float64Array;
  /** The day as a running number; NaN where it is not known. Null when no days are known at all. */
  readonly days: Float64Array | null;
}

/** Picks of which at least some days are known. */
export interface DatedPicks extends Picks {
  readonly days: Float64Array;
}
