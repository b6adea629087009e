import type { Caution } from "../caution";
import type { Known } from "../known";
import type { Lazy } from "../lazy";
import type { LostPlants } from "../lostPlants";

/** PERPLANT's finding. Amounts are in the sheet's unit. */
export interface PerPlant {
  readonly finding: "per-plant";
  readonly name: string | null;
  readonly unit: string | null;
  readonly rule: LostPlants;
  /** True when the range held one season total and `planted` said how many plants it is from. */
  readonly fromTotal: boolean;
  readonly perPlant: Known;
  readonly setOut: number;
  readonly lost: Known;
  readonly notRecorded: Known;
  readonly counted: number;
  readonly total: number;
  readonly perSurvivingPlant: Known;
  readonly perPlantSetOut: Known;
  readonly cautions: Lazy<readonly Caution[]>;
}
