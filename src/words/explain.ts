import type { Explanation } from "../nouns/explanation";
import type { Finding } from "../nouns/finding";
import { explainChanceToSee } from "./chanceToSeeExplained";
import { explainLookedOver } from "./lookedOverExplained";
import { explainManyTreatments } from "./manyTreatmentsExplained";
import { explainPerPlant } from "./perPlantExplained";
import { explainPlainNumbers } from "./plainNumbersExplained";
import { explainPlantsNeeded } from "./plantsNeededExplained";
import { explainSmallestChange } from "./smallestChangeExplained";
import { explainTotalsOnly } from "./totalsOnlyExplained";
import { explainTwoTreatments } from "./twoTreatmentsExplained";
import { explainUnevenness } from "./unevennessExplained";
import { explainUpDown } from "./upDownExplained";
import { explainWorthIt } from "./worthItExplained";

/** Any finding in plain words, part by part, for the pane. It asks for every lazy fact, which may take a moment. */
export function explain(finding: Finding): Explanation {
  switch (finding.finding) {
    case "up-down":
      return explainUpDown(finding);
    case "per-plant":
      return explainPerPlant(finding);
    case "unevenness":
      return explainUnevenness(finding);
    case "two-treatments":
      return explainTwoTreatments(finding);
    case "many-treatments":
      return explainManyTreatments(finding);
    case "worth-it":
      return explainWorthIt(finding);
    case "totals-only":
      return explainTotalsOnly(finding);
    case "plants-needed":
      return explainPlantsNeeded(finding);
    case "smallest-change":
      return explainSmallestChange(finding);
    case "chance-to-see":
      return explainChanceToSee(finding);
    case "plain-numbers":
      return explainPlainNumbers(finding);
    case "looked-over":
      return explainLookedOver(finding);
  }
}
