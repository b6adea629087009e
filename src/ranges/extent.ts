/** How much of a range to read, where that depends on the ranges it belongs together with. */
export interface Extent {
  /** How many cells are there, in reading order; left out: up to the range's last filled cell. */
  readonly length?: number;
  /** Whether the first cell is a heading; left out: the range's first cell decides. */
  readonly heading?: boolean;
}
