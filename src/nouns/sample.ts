import type { Place } from "./place";

/** Why a cell holds no usable number although the plant was not lost. */
export type Unusable = "empty" | "text" | "doubtful-number" | "unit-unclear" | "error" | "true-or-false" | "date";

/** What one cell of an amounts range means. */
export type Entry =
  | {
      readonly kind: "value";
      readonly value: number;
      readonly place: Place;
      /** How the number was read: a plain number, a mark or word removed, a unit converted, "none" read as 0. */
      readonly read: "number" | "mark-removed" | "unit-converted" | "none-word";
    }
  | { readonly kind: "lost"; readonly place: Place }
  | { readonly kind: "not-recorded"; readonly why: Unusable; readonly place: Place };

/** An amounts range as read: one entry per cell, row by row, without its heading and without empty cells at the end. */
export interface Sample {
  /** The argument it came from: "usual". */
  readonly argument: string;
  /** The heading in the first cell, if there is one. */
  readonly name: string | null;
  /** Where the whole range stands, for sentences: "C1:C9" or "new". */
  readonly where: string;
  /** The unit that the heading or the cells name ("g"), null where none is named. */
  readonly unit: string | null;
  readonly entries: readonly Entry[];
  /** Zeros that may be empty cells, because the host may hand over an empty cell as 0. */
  readonly zerosUnverified: number;
  /** The last cell when its number equals the average of those above (not surely enough to refuse): caution C35. */
  readonly averageAtEnd: Place | null;
}

/** One usable plant. */
export interface Plant {
  readonly value: number;
  readonly place: Place;
}
