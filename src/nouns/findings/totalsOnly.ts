import type { Caution } from "../caution";
import type { Known, Limits } from "../known";
import type { Lazy } from "../lazy";

/** One treatment's season total, and how many plants it is from. */
export interface TotalFound {
  /** The heading above the total, null when there is none. */
  readonly name: string | null;
  /** In the sheet's unit; an Absence where the cell holds no number. */
  readonly total: Known;
  readonly plants: number;
  readonly perPlant: Known;
}

/** The one end that a total of 0 leaves: the new bore at least, or at most, so many times as many as the usual. */
export interface TimesBound {
  readonly end: "at least" | "at most";
  readonly times: number;
}

/** Why totals are taken as weights: the grower said so, a unit or a fraction shows it, or they are too big to count. */
export type WeighedBecause = "said" | "unit" | "fraction" | "large";

/** TOTALSONLY's finding: two season totals without a record of each plant. Changes are fractions of the usual. */
export interface TotalsOnly {
  readonly finding: "totals-only";
  readonly usual: TotalFound;
  readonly tried: TotalFound;
  readonly unit: string | null;
  /** Null when the totals are counts. */
  readonly weighed: WeighedBecause | null;
  /** How much single plants treated alike are taken to differ, as a fraction: nothing here measures it. */
  readonly unevenness: number;
  readonly unevennessGiven: boolean;
  /** The range that holds no number; null when both do. */
  readonly nothingIn: string | null;
  readonly change: Known;
  readonly changeRange: Limits;
  /** The unevenness below which the gap stands out. */
  readonly realBelow: Known;
  /** The change that the luck of counting alone allows: the best case, with all plants alike. */
  readonly countsOnly: Limits;
  /** Null unless just one of two counts is 0. */
  readonly bound: TimesBound | null;
  readonly cautions: Lazy<readonly Caution[]>;
}
