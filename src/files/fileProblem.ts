/** Why a file could not be opened or saved. Nothing has been changed or lost when one of these is the answer. */
export type FileProblem =
  | { readonly problem: "empty-file" }
  | { readonly problem: "encrypted" }
  | { readonly problem: "old-excel" }
  | { readonly problem: "other-kind" }
  | { readonly problem: "damaged" }
  | { readonly problem: "not-text" }
  | { readonly problem: "too-large"; readonly megabytes: number; readonly limit: number }
  | { readonly problem: "bomb"; readonly megabytes: number; readonly limit: number }
  | { readonly problem: "too-many-cells"; readonly cells: number; readonly limit: number };

/** Told by its shape from what was asked for. */
export function isFileProblem(answer: object): answer is FileProblem {
  return "problem" in answer;
}
