import type { CellRange } from "../nouns/cellRange";
import type { Finding } from "../nouns/finding";
import type { Line, Outputs } from "../nouns/line";
import type { Problem } from "../nouns/problem";
import type { Formats } from "../nouns/shownOutputs";

/** What a refused call says: the error's code and its sentence. */
export interface Refusal {
  readonly code: "#VALUE!" | "#N/A";
  readonly message: string;
  readonly problem: Problem;
}

/** One answered call of a worksheet function. */
export interface Answer {
  readonly id: string;
  readonly finding: Finding;
  /** The labelled figures, in table order. */
  readonly lines: readonly Line[];
  /** The function's whole table as it would spill. */
  table(): Outputs;
  /** What the cell shows for the call as made. */
  cell(): Outputs;
  /** How each of those cells is best shown. */
  formats(): Formats;
}

/** One parameter of a worksheet function, in order. */
export interface Parameter {
  readonly name: string;
  readonly optional: boolean;
}

/** All worksheet functions by id; cell and pane both ask here, so the explained number is the cell's number. */
export interface Desk {
  parameters(id: string): readonly Parameter[] | null;
  /** `given` in the order of the parameters; null for an omitted one. */
  ask(id: string, given: readonly (CellRange | null)[]): Answer | Refusal;
}

/** Whether a call was refused. */
export function isRefusal(answer: Answer | Refusal): answer is Refusal {
  return "problem" in answer;
}
