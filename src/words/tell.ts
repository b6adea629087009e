import type { Told } from "../nouns/explanation";
import type { Finding } from "../nouns/finding";
import { tellChanceToSee } from "./chanceToSee";
import { tellLookedOver } from "./lookedOver";
import { tellManyTreatments } from "./manyTreatments";
import { tellPerPlant } from "./perPlant";
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
    case "totals-only":
      return tellTotalsOnly(finding);
    case "plants-needed":
      return tellPlantsNeeded(finding);
    case "smallest-change":
      return tellSmallestChange(finding);
    case "chance-to-see":
      return tellChanceToSee(finding);
    case "plain-numbers":
      return tellPlainNumbers(finding);
    case "looked-over":
      return tellLookedOver(finding);
  }
}
