import type { WrittenDay } from "./day";
import type { Place } from "./place";

/** A number with the unit it is in; null where nobody named one. */
export interface Amount {
  readonly value: number;
  readonly unit: string | null;
}

/** Why a cell could not be read: a note, one of two numbers or days, a unit nobody can tell, TRUE or FALSE. */
export type Unreadable =
  | { readonly why: "text" | "unit-unclear" | "true-or-false" | "not-a-date" }
  | { readonly why: "doubtful-number"; readonly numbers: readonly [taken: number, other: number] }
  | { readonly why: "order"; readonly days: readonly WrittenDay[] }
  | { readonly why: "year"; readonly days: readonly WrittenDay[] };

/** What made a row look like a total or an average. */
export type TotalRow = "label" | "no-label" | "total" | "average" | "equals-average";

/**
 * Why a number stands out: too far from the others, beyond what the grower set, below zero, over a thousand million.
 */
export type OddBecause = "far" | "beyond-limits" | "below-zero" | "huge";

/** A name that is nearly like one used more often, or that one in another spelling. */
export interface NamesAlike {
  readonly kind: "names-alike";
  /** The name used more often. */
  readonly like: string;
  /** How many cells hold this spelling, and how many the other. */
  readonly uses: number;
  readonly likeUses: number;
  /** True where letter case and spaces alone tell them apart, so that both are read as one name. */
  readonly same: boolean;
}

/** What was made of one cell that does not simply say its number, date or name (METHODS 3 and 4.1). */
export type Remark =
  | ({ readonly kind: "unreadable" } & Unreadable)
  | { readonly kind: "possible-total"; readonly row: TotalRow }
  | { readonly kind: "possible-double"; readonly like: Place }
  | { readonly kind: "excel-date"; readonly day: WrittenDay }
  | { readonly kind: "odd-size"; readonly because: OddBecause }
  | { readonly kind: "error" }
  | { readonly kind: "not-recorded"; readonly why: "empty" | "empty-row" | "word" }
  | NamesAlike
  | { readonly kind: "name-once" }
  | { readonly kind: "lost" }
  | { readonly kind: "none-as-zero" }
  | { readonly kind: "zero" }
  | { readonly kind: "unit-converted"; readonly amount: Amount }
  | { readonly kind: "mark-removed"; readonly amount: Amount }
  /** Order or year taken from the rest of its column. */
  | { readonly kind: "date-settled"; readonly serial: number };

/** A remark with its place. Every cell that was converted, guessed at or left out has one. */
export type Reading = Remark & {
  readonly place: Place;
  /** The cell as it stands in the sheet. */
  readonly text: string;
};

/** The kinds of readings. */
export type ReadingKind = Remark["kind"];

/** Kinds that a grower should look at, worst first; the others were read for certain. */
export const NEEDS_A_LOOK = [
  "unreadable",
  "possible-total",
  "possible-double",
  "excel-date",
  "odd-size",
  "error",
  "not-recorded",
  "names-alike",
  "name-once",
] as const satisfies readonly ReadingKind[];
