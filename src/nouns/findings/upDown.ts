import type { Caution } from "../caution";
import type { Known, Limits } from "../known";
import type { Lazy } from "../lazy";

/** UPDOWN's finding: percent change with the usual as the base. Changes are fractions. */
export interface UpDown {
  readonly finding: "up-down";
  readonly names: { readonly usual: string | null; readonly tried: string | null };
  readonly unit: string | null;
  /** True when both are one figure each, so that no range can be given. */
  readonly single: boolean;
  readonly confidence: number;
  readonly usualMean: number;
  readonly triedMean: number;
  readonly usualPlants: number;
  readonly triedPlants: number;
  /** An Absence when the usual is 0: then the other figures still stand. */
  readonly change: Known;
  readonly changeRange: Limits;
  readonly timesAsMuch: Known;
  readonly cautions: Lazy<readonly Caution[]>;
}
