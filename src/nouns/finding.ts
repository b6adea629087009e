import type { HalfPicked } from "./findings/halfPicked";
import type { ManyTreatments } from "./findings/manyTreatments";
import type { PerPlant } from "./findings/perPlant";
import type { PickCurve } from "./findings/pickCurve";
import type { PickTally } from "./findings/pickTally";
import type { ChanceToSee, PlantsNeeded, SmallestChange } from "./findings/planning";
import type { TwoTreatments } from "./findings/twoTreatments";
import type { Unevenness } from "./findings/unevenness";
import type { UpDown } from "./findings/upDown";

/** What a question about the grower's ranges found out: read-only facts at full precision, worded elsewhere. */
export type Finding =
  | UpDown
  | PerPlant
  | Unevenness
  | TwoTreatments
  | PlantsNeeded
  | SmallestChange
  | ChanceToSee
  | ManyTreatments
  | PickCurve
  | HalfPicked
  | PickTally;
