/** Where a value stands: the sheet's cell when the address is known, else the row within the argument. */
export interface Place {
  /** The argument's name: "usual". */
  readonly argument: string;
  /** Row within the argument, from 1. */
  readonly row: number;
  /** Column within the argument, from 1; null when the argument has one column only. */
  readonly column: number | null;
  /** The sheet's own name for the cell, "D10"; null when the address is not known. */
  readonly cell: string | null;
}
