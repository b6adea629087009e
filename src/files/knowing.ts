/** What the reader must know of the grid. */
export interface Knowing {
  /** Ids of our functions, in capitals: "COMPARETWO". */
  readonly own: ReadonlySet<string>;
  /** All functions that the grid works out, ours with "FAIRBED.", in capitals. */
  readonly known: ReadonlySet<string>;
}
