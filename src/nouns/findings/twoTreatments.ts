import type { Caution } from "../caution";
import type { Known, Limits } from "../known";
import type { Lazy } from "../lazy";
import type { LostPlants } from "../lostPlants";
import type { Place } from "../place";
import type { Plant } from "../sample";
import type { RangeVerdict, Verdict, Worthwhile } from "../verdict";

/** The ways to compare two treatments; "pairs" and "beds" are one method. */
export type HowTwo = "separate" | "pairs" | "equal unevenness" | "ranks" | "pairs ranks";

/** One of the two treatments as compared. */
export interface Group {
  readonly role: "usual" | "new";
  /** The heading typed above its numbers, null when there is none. */
  readonly name: string | null;
  /** The plants that count, in sheet order; with pairs, those of complete pairs. */
  readonly plants: readonly Plant[];
  /** Where lost plants stand. */
  readonly lost: readonly Place[];
  readonly notRecorded: readonly Place[];
  /** Average per plant, in the sheet's unit. */
  readonly mean: Known;
  /** Standard deviation between plants, same unit. */
  readonly deviation: Known;
  /** Standard deviation as a fraction of the average. */
  readonly unevenness: Known;
}

/** How often swapping plant labels gives a gap at least as big as the one seen. */
export interface LabelSwap {
  readonly p: number;
  /** Relabelings as extreme as the real one, and all that were looked at. */
  readonly hits: number;
  readonly tried: number;
  /** True when all relabelings were counted, false when drawn by lot. */
  readonly exact: boolean;
}

/** COMPARETWO's finding. Differences are new − usual in the sheet's unit; changes are fractions of the usual average. */
export interface TwoTreatments {
  readonly finding: "two-treatments";
  readonly how: HowTwo;
  /** What the grower typed for it: "beds" reads the same as "pairs". */
  readonly asked: HowTwo | "beds";
  readonly lostPlants: LostPlants;
  readonly worthwhile: Worthwhile;
  readonly confidence: number;
  readonly usual: Group;
  readonly tried: Group;
  readonly unit: string | null;
  /** Complete pairs, and pairs left out because one plant has no number; null for separate plants. */
  readonly pairs: { readonly complete: number; readonly incomplete: number } | null;
  readonly verdict: Verdict;
  /** The verdict of the range alone, before the caps for few plants; null where there is no range. */
  readonly rangeVerdict: RangeVerdict | null;
  /** Where a treatment has no usable plants. */
  readonly nothingIn: string | null;
  readonly difference: Known;
  readonly differenceRange: Limits;
  readonly change: Known;
  readonly changeRange: Limits;
  readonly timesAsMuch: Known;
  readonly t: Known;
  readonly df: Known;
  readonly pValue: Known;
  readonly labelSwap: Lazy<LabelSwap | null>;
  /** Fisher's exact test on lost against kept. */
  readonly lossP: Lazy<Known>;
  /** The one plant without which a verdict up or down is lost. */
  readonly onePlantDecides: Lazy<Place | null>;
  /** Only what the cell's arguments can tell, in order of the codes; C12 is always among them. */
  readonly cautions: Lazy<readonly Caution[]>;
}
