import type { Showable } from "../cells/showable";
import type { Finding } from "../nouns/finding";
import type { Problem } from "../nouns/problem";
import type { Given } from "../questions/given";
import type { Parameter } from "./desk";

/** What a worksheet function shows beside the words that all functions share. */
export type Shown = Pick<Showable, "answer" | "answerFormat" | "lines" | "columns" | "own" | "tables" | "missing">;

/** One worksheet function: its parameters, the question it asks and what it shows. */
export interface WorksheetFunction<Found extends Finding> {
  readonly id: string;
  readonly parameters: readonly Parameter[];
  readonly ask: (given: Given) => Found | Problem;
  readonly shown: (found: Found, given: Given) => Shown;
  /** Words for later arguments, by the argument's name. */
  readonly choices: Readonly<Record<string, readonly string[]>>;
}
