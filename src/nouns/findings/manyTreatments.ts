import type { Caution } from "../caution";
import type { Known, Limits } from "../known";
import type { Lazy } from "../lazy";
import type { LostPlants } from "../lostPlants";
import type { Place } from "../place";
import type { Plant } from "../sample";
import type { RangeVerdict, Verdict, Worthwhile } from "../verdict";

/** The ways to compare several treatments. */
export type HowMany = "against usual" | "all pairs" | "own unevenness";

/** A usable plant and the bed it stood in; null without beds. */
export interface BedPlantFound extends Plant {
  readonly bed: string | null;
}

/** One treatment set against the usual. Changes are fractions of the usual average (beds removed, where there are beds). */
export interface AgainstUsual {
  readonly difference: Known;
  readonly differenceRange: Limits;
  readonly change: Known;
  readonly changeRange: Limits;
  readonly pValue: Known;
  /** The range's verdict before the caps for few plants; null where there is no range. */
  readonly rangeVerdict: RangeVerdict | null;
  readonly verdict: Verdict;
}

/** One of several treatments. Averages are in the sheet's unit. */
export interface TreatmentFound {
  /** Spelt as first seen. */
  readonly name: string;
  readonly isUsual: boolean;
  readonly plants: readonly BedPlantFound[];
  readonly lost: readonly Place[];
  readonly notRecorded: readonly Place[];
  readonly mean: Known;
  /** The average as if every treatment had stood in every bed; null without beds. */
  readonly meanBedsRemoved: Known | null;
  /** Null for the usual itself, and where no usual is named. */
  readonly againstUsual: AgainstUsual | null;
  /** Treatments that share a letter are not shown to differ; "" where pairs are not compared. */
  readonly letters: string;
}

/** Two of the treatments; the first has the higher average. */
export interface PairFound {
  readonly higher: string;
  readonly lower: string;
  readonly difference: Known;
  readonly differenceRange: Limits;
  readonly pValue: Known;
  /** What the percent range against the lower one says. */
  readonly verdict: Verdict;
}

/** One line of the table of sums of squares. */
export interface SourceLine {
  readonly source: "beds" | "treatments" | "residual";
  readonly df: number;
  readonly sumOfSquares: number;
  readonly meanSquare: number;
  /** Null for the residual. */
  readonly f: number | null;
  readonly p: number | null;
}

/** The sums of squares, beds first; and the least significant difference where one figure holds for every pair. */
export interface SumsOfSquares {
  readonly lines: readonly SourceLine[];
  readonly leastSignificantDifference: number | null;
}

/** COMPAREMANY's finding: two to twenty treatments, with or without beds. */
export interface ManyTreatments {
  readonly finding: "many-treatments";
  readonly how: HowMany;
  /** The usual's name as spelt in the sheet; null when none was named. */
  readonly usual: string | null;
  readonly worthwhile: Worthwhile;
  /** Of all ranges together: 0.95. */
  readonly confidence: number;
  readonly lostPlants: LostPlants;
  readonly unit: string | null;
  /** Highest average first (beds removed, where there are beds). */
  readonly treatments: readonly TreatmentFound[];
  /** The beds' names in order of appearance; null for separate plants. */
  readonly beds: readonly string[] | null;
  /** Why there is no answer: where the usual, or all but one treatment, has no usable plants. */
  readonly nothingIn: string | null;
  /** Beds that hold one treatment only and so tell nothing. */
  readonly idleBeds: readonly string[];
  /** Rows left out because their treatment, or their bed, is not named. */
  readonly leftOut: readonly Place[];
  /** The F test of all treatments together. */
  readonly pAllTogether: Known;
  readonly unevenness: Known;
  /** Residual degrees of freedom; with own unevenness those of Welch's F. */
  readonly df: Known;
  /** All pairs, the biggest difference first. */
  readonly pairs: Lazy<readonly PairFound[]>;
  /** Null with own unevenness. */
  readonly sumsOfSquares: Lazy<SumsOfSquares | null>;
  /** Those that a table shows at every keystroke: without the two that need refits and swaps (C21, C22). */
  readonly quickCautions: Lazy<readonly Caution[]>;
  /** All, in order of the codes. */
  readonly cautions: Lazy<readonly Caution[]>;
}
