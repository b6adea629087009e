import type { Cell } from "../nouns/cell";

/** What stands between two commas of a call; `text` is its source without the spaces around it. */
export type Argument =
  /** A range, a table's column, a defined name, or a spill ("A1#"): what it holds only the sheet can say. */
  | { readonly kind: "reference"; readonly text: string }
  /** One value typed into the formula. */
  | { readonly kind: "value"; readonly text: string; readonly cell: Cell }
  /** An array typed into the formula, row by row: {1,2;3,4}. */
  | { readonly kind: "block"; readonly text: string; readonly cells: readonly (readonly Cell[])[] }
  /** Another of our calls. */
  | { readonly kind: "call"; readonly text: string; readonly call: Call }
  /** Nothing. */
  | { readonly kind: "omitted"; readonly text: "" }
  /** Anything that only the spreadsheet can work out. */
  | { readonly kind: "expression"; readonly text: string };

/** One of our calls as it stands in a formula. */
export interface Call {
  /** The function without our namespace, in capitals: "COMPARETWO". */
  readonly id: string;
  /** Its source, from the name to the closing bracket. */
  readonly text: string;
  readonly arguments: readonly Argument[];
}
