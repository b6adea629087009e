/** What a cell may receive: never NaN, infinite, null or undefined. */
export type Output = number | string;

/** An error value in one cell of a block, with the sentence that Excel shows beside it. */
export interface ErrorOutput {
  readonly error: "#VALUE!" | "#N/A";
  readonly sentence: string;
}

/** A block of results as it spills, row by row; a cell that could not be read may hold an error value. */
export type Outputs = readonly (readonly (Output | ErrorOutput)[])[];

/** How a figure is best shown. */
export type LineFormat = "percent" | "amount" | "count" | "decimal" | "text";

/** One labelled figure or text of an answer, worked out when asked for. */
export interface Line {
  /** The label that a grower types as *show*: "Change low". */
  readonly label: string;
  readonly format: LineFormat;
  readonly value: () => Output;
}
