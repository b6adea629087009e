/** What a cell may receive: never NaN, infinite, null or undefined. */
export type Output = number | string;

/** A block of results as it spills, row by row. */
export type Outputs = readonly (readonly Output[])[];

/** How a figure is best shown. */
export type LineFormat = "percent" | "amount" | "count" | "decimal" | "text";

/** One labelled figure or text of an answer, worked out when asked for. */
export interface Line {
  /** The label that a grower types as *show*: "Change low". */
  readonly label: string;
  readonly format: LineFormat;
  readonly value: () => Output;
}
