import type { Told } from "../nouns/explanation";
import type { Finding } from "../nouns/finding";
import { tellChanceToSee } from "./chanceToSee";
import { tellDrawnLots } from "./drawLots";
import { tellHalfPicked } from "./halfPicked";
import { tellLookedOver } from "./lookedOver";
import { tellManyTreatments } from "./manyTreatments";
import { tellManyTrials } from "./manyTrials";
import { tellPerPlant } from "./perPlant";
import { tellPickCurve } from "./pickCurve";
import { tellPickTally } from "./pickTally";
import { tellPlainNumbers } from "./plainNumbers";
import { tellPlantsNeeded } from "./plantsNeeded";
import { tellSmallestChange } from "./smallestChange";
import { tellTotalsOnly } from "./totalsOnly";
import { tellTwoTreatments } from "./twoTreatments";
import { tellUnevenness } from "./unevenness";
import { tellUpDown } from "./upDown";
import { tellWorthIt } from "./worthIt";

/** Any finding as a cell tells it: what came out, and a line to repeat in public. */
export function tell(finding: Finding): Told {
  switch (finding.finding) {
    case "up-down":
      return tellUpDown(finding);
    case "per-plant":
      return tellPerPlant(finding);
    case "unevenness":
      return tellUnevenness(finding);
    case "two-treatments":
      return tellTwoTreatments(finding);
    case "many-treatments":
      return tellManyTreatments(finding);
    case "worth-it":
      return tellWorthIt(finding);
    case "many-trials":
      return tellManyTrials(finding);
    case "totals-only":
      return tellTotalsOnly(finding);
    case "pick-curve":
      return tellPickCurve(finding);
    case "half-picked":
      return tellHalfPicked(finding);
    case "pick-tally":
      return tellPickTally(finding);
    case "plants-needed":
      return tellPlantsNeeded(finding);
    case "smallest-change":
      return tellSmallestChange(finding);
    case "chance-to-see":
      return tellChanceToSee(finding);
    case "drawn-lots":
      return tellDrawnLots(finding);
    case "plain-numbers":
      return tellPlainNumbers(finding);
    case "looked-over":
      return tellLookedOver(finding);
  }
}
