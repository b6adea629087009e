/** One thing that a clean copy tells of a cell: what it was, what became of it, and why. */
export interface Change {
  /** The cell it was: "'Pick log'!F14". */
  readonly where: string;
  readonly was: string;
  readonly became: string;
  readonly why: string;
}

/** What became of a cell in doubt. */
export const LEFT_AS_IT_STANDS = "left as it stands";
/** What became of a row that is no plant's and no pick's. */
export const LEFT_OUT = "left out";
