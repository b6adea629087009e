import type { Caution } from "../caution";
import type { Known, Limits } from "../known";
import type { Lazy } from "../lazy";
import type { Verdict } from "../verdict";

/** What the money range says; "on averages" where nothing tells how far luck reaches. */
export type WorthVerdict = "pays" | "does-not-pay" | "may-or-may-not" | "pays-on-averages" | "does-not-pay-on-averages";

/** The whole next planting's money left, for so many plants. */
export interface NextPlanting extends Limits {
  readonly middle: Known;
}

/** WORTHIT's finding: what is left per plant when the extra harvest is sold and the extra cost paid. */
export interface WorthIt {
  readonly finding: "worth-it";
  readonly names: { readonly usual: string | null; readonly tried: string | null };
  /** The unit of the harvest that the price is for. */
  readonly unit: string | null;
  /** One figure on each side. */
  readonly single: boolean;
  readonly how: "separate" | "pairs";
  readonly usualPlants: number;
  readonly triedPlants: number;
  readonly usualMean: number;
  readonly triedMean: number;
  readonly price: number;
  /** Money per plant; below 0 when the new way is cheaper. */
  readonly extraCost: number;
  readonly verdict: WorthVerdict;
  /** What the harvest alone says, as COMPARETWO says it at a worthwhile change of 10 %. */
  readonly harvest: Verdict;
  /** Harvest per plant, new − usual. */
  readonly extra: number;
  readonly worth: number;
  readonly left: number;
  readonly leftRange: Limits;
  readonly costOfExtra: Known;
  readonly breakEvenExtra: number;
  /** As a fraction of the usual average. */
  readonly breakEvenChange: Known;
  /** Null when the next planting was not given. */
  readonly nextPlants: number | null;
  readonly nextPlanting: NextPlanting;
  readonly cautions: Lazy<readonly Caution[]>;
}
