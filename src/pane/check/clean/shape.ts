/** How a table is laid out: one row a pick or a plant; or plants down and their picks, or the treatments, across. */
export type Layout = "rows" | "picks-across" | "treatments-across";

/** What the grower says of a table before it is copied. */
export interface Shape {
  readonly layout: Layout;
  /** The row with the headings, from 1 among the rows looked at; rows above it are left out. */
  readonly headingRow: number;
  /** Whether an empty cell of a table with picks across means that nothing was picked. */
  readonly blankIsNone: boolean;
}
