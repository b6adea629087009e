import type { WrittenDay } from "./day";
import type { Place } from "./place";

/** Rows and columns of an argument, for sentences about shapes. */
export interface Shape {
  readonly argument: string;
  readonly rows: number;
  readonly columns: number;
}

/**
 * Why a call gets no finding. Facts only: the sentence is in words/problem.ts, the error code (#VALUE! or #N/A) in
 * cells/problemCode.ts; both fail to compile when a new problem is missing there.
 */
export type Problem =
  | { readonly problem: "missing-argument"; readonly argument: string }
  | { readonly problem: "unknown-show"; readonly given: string; readonly allowed: readonly string[] }
  | { readonly problem: "show-elsewhere"; readonly given: string; readonly argument: string; readonly placesOn: number }
  | {
      readonly problem: "unknown-choice";
      readonly argument: string;
      readonly given: string;
      readonly allowed: readonly string[];
    }
  | { readonly problem: "one-cell-wanted"; readonly argument: string; readonly rows: number; readonly columns: number }
  | { readonly problem: "not-a-number"; readonly argument: string; readonly given: string }
  | {
      readonly problem: "not-whole";
      readonly argument: string;
      readonly given: number;
      readonly low: number;
      readonly high: number | null;
    }
  | { readonly problem: "percent-as-points"; readonly argument: string; readonly given: number }
  | {
      readonly problem: "percent-outside";
      readonly argument: string;
      readonly given: number;
      readonly low: number;
      readonly high: number;
    }
  | { readonly problem: "zero-worthwhile" }
  | { readonly problem: "price-not-above-zero"; readonly given: number }
  | { readonly problem: "zero-unevenness"; readonly given: number }
  | { readonly problem: "negative-amount"; readonly place: Place; readonly given: number }
  | { readonly problem: "total-at-end"; readonly place: Place; readonly endBefore: Place }
  | { readonly problem: "average-at-end"; readonly place: Place; readonly endBefore: Place }
  | { readonly problem: "shapes-differ"; readonly first: Shape; readonly second: Shape }
  | { readonly problem: "ranges-swapped"; readonly first: string; readonly second: string }
  | {
      readonly problem: "units-differ";
      readonly first: string;
      readonly firstUnit: string;
      readonly second: string;
      readonly secondUnit: string;
    }
  | { readonly problem: "no-usable-plants"; readonly where: string }
  | { readonly problem: "no-usable-trials"; readonly where: string }
  | { readonly problem: "usual-zero"; readonly tried: number }
  | { readonly problem: "numbers-for-planted"; readonly numbers: number; readonly planted: number }
  | { readonly problem: "planted-unclear"; readonly given: string }
  | { readonly problem: "all-lost"; readonly where: string }
  | { readonly problem: "no-change" }
  | { readonly problem: "fall-too-big"; readonly given: number }
  | { readonly problem: "too-few-each"; readonly given: number }
  | { readonly problem: "not-a-multiple"; readonly plants: number; readonly beds: number }
  | { readonly problem: "no-freedom"; readonly plants: number; readonly treatments: number; readonly beds: number }
  | { readonly problem: "no-draw-number" }
  | { readonly problem: "draw-number"; readonly given: number }
  | { readonly problem: "too-many-spots"; readonly spots: number; readonly most: number }
  | { readonly problem: "name-twice"; readonly name: string }
  | { readonly problem: "error-for-name"; readonly place: Place; readonly given: string }
  | { readonly problem: "too-few-treatments"; readonly names: readonly string[] }
  | { readonly problem: "too-many-treatments"; readonly count: number; readonly most: number }
  | { readonly problem: "usual-not-named"; readonly names: readonly string[] }
  | { readonly problem: "treatment-is-bed" }
  | { readonly problem: "bed-is-unit" }
  | { readonly problem: "no-shared-bed"; readonly apart: readonly string[] }
  | { readonly problem: "own-unevenness-in-beds" }
  | { readonly problem: "no-picks"; readonly where: string }
  | { readonly problem: "no-dates"; readonly where: string }
  | {
      readonly problem: "most-have-two-names";
      readonly of: "treatment" | "bed";
      readonly plant: string;
      readonly names: readonly [string, string];
    }
  | { readonly problem: "unpicked-without-treatment"; readonly plants: readonly string[] }
  | { readonly problem: "too-many-columns"; readonly argument: string; readonly columns: number; readonly most: number }
  | { readonly problem: "two-seasons"; readonly days: number }
  | { readonly problem: "plants-each-lacks"; readonly name: string }
  | { readonly problem: "number-without-name"; readonly place: Place; readonly given: string }
  | { readonly problem: "not-a-date"; readonly argument: string; readonly given: string }
  | { readonly problem: "not-plain"; readonly given: string; readonly because: NotPlain }
  | { readonly problem: "unknown-treatment"; readonly given: string; readonly names: readonly string[] };

/** Why a cell is no plain number: a note, one of two numbers, a unit of another kind, a date that Excel made. */
export type NotPlain =
  | { readonly why: "unreadable" }
  | { readonly why: "doubtful"; readonly numbers: readonly [number, number] }
  | { readonly why: "wrong-unit"; readonly unit: string }
  | { readonly why: "excel-date"; readonly day: WrittenDay };

export function isProblem(answer: object): answer is Problem {
  return "problem" in answer;
}
