import type { Line, LineFormat, Output, Outputs } from "../nouns/line";
import type { Problem } from "../nouns/problem";
import type { ShownOutputs } from "../nouns/shownOutputs";

/** A table by rows: a header, and one row a treatment or plant. */
export interface Columns {
  readonly header: readonly string[];
  /** Each row's first cell is its name. */
  readonly rows: readonly (readonly Output[])[];
  /** Which column holds the value that a row's name stands for, from 0; null where rows are not asked for by name. */
  readonly main: number | null;
  /** How the figures of each column are best shown; left out, as they come. */
  readonly formats?: readonly LineFormat[];
  /** Rows at the end of the whole table that belong to no column shown alone; their one value is among `own`. */
  readonly last?: ShownOutputs;
}

/** A word that a grower may mistakenly type as *show* although it belongs to a later argument. */
export interface ForeignWord {
  readonly word: string;
  readonly argument: string;
  /** How many places after *show* that argument comes. */
  readonly placesOn: number;
}

/** A number that is due although the data hold none: the call is refused where that number alone is asked for. */
export interface MissingNumber {
  /** What stands for it as *show*: "answer", and its label. */
  readonly shows: readonly string[];
  readonly problem: Problem;
}

/** Everything that one answered call can show in a cell, each part worked out when asked for. */
export interface Showable {
  /** One value, or a block of cells that spills; null where the answer is the whole table. */
  readonly answer: (() => Output | Outputs) | null;
  /** How the answer is best shown; left out, as it comes. */
  readonly answerFormat?: LineFormat;
  /** The two-column table; with `columns`, the rows below them. */
  readonly lines: readonly Line[];
  readonly columns: (() => Columns) | null;
  readonly words: () => string;
  readonly say: () => string;
  readonly cautions: () => string;
  /** The function's own words for *show*: "short", "plan with". */
  readonly own: readonly Line[];
  /** The function's own words that show a block of cells: "all pairs", "anova". */
  readonly tables?: Readonly<Record<string, () => ShownOutputs>>;
  readonly foreign: readonly ForeignWord[];
  /** Null or left out when every number that is due is there. */
  readonly missing?: MissingNumber | null;
}
