import type { Caution } from "../caution";
import type { Known, Limits } from "../known";
import type { Lazy } from "../lazy";
import type { Place } from "../place";

/** How much the plants of one treatment differ. */
export interface TreatmentUnevenness {
  /** Null when no treatments were given and the range has no heading. */
  readonly name: string | null;
  readonly plants: number;
  readonly mean: Known;
  readonly deviation: Known;
  /** Standard deviation as a fraction of the average. */
  readonly unevenness: Known;
  /** 80 % range of the unevenness. */
  readonly range: Limits;
  readonly median: Known;
  readonly lowest: Known;
  readonly highest: Known;
  readonly odd: readonly Place[];
}

/** UNEVENNESS's finding. */
export interface Unevenness {
  readonly finding: "unevenness";
  readonly treatments: readonly TreatmentUnevenness[];
  /** All treatments pooled; its deviation is not given. */
  readonly all: TreatmentUnevenness;
  readonly withinBeds: boolean;
  readonly unit: string | null;
  /** Rows left out because their treatment or bed is not named. */
  readonly leftOut: readonly Place[];
  readonly cautions: Lazy<readonly Caution[]>;
}
