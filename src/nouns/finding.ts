import type { DrawnLots } from "./findings/drawnLots";
import type { HalfPicked } from "./findings/halfPicked";
import type { LookedOver } from "./findings/lookedOver";
import type { ManyTreatments } from "./findings/manyTreatments";
import type { ManyTrials } from "./findings/manyTrials";
import type { PerPlant } from "./findings/perPlant";
import type { PickCurve } from "./findings/pickCurve";
import type { PickTally } from "./findings/pickTally";
import type { PlainNumbers } from "./findings/plainNumbers";
import type { ChanceToSee, PlantsNeeded, SmallestChange } from "./findings/planning";
import type { TotalsOnly } from "./findings/totalsOnly";
import type { TwoTreatments } from "./findings/twoTreatments";
import type { Unevenness } from "./findings/unevenness";
import type { UpDown } from "./findings/upDown";
import type { WorthIt } from "./findings/worthIt";

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
  | ManyTrials
  | TotalsOnly
  | WorthIt
  | DrawnLots
  | PickCurve
  | HalfPicked
  | PickTally
  | PlainNumbers
  | LookedOver;
