import type { Explanation } from "../nouns/explanation";
import type { Finding } from "../nouns/finding";
import { explainChanceToSee } from "./chanceToSeeExplained";
import { explainDrawnLots } from "./drawLotsExplained";
import { explainHalfPicked } from "./halfPickedExplained";
import { explainLookedOver } from "./lookedOverExplained";
import { explainManyTreatments } from "./manyTreatmentsExplained";
import { explainManyTrials } from "./manyTrialsExplained";
import { explainPerPlant } from "./perPlantExplained";
import { explainPickCurve } from "./pickCurveExplained";
import { explainPickTally } from "./pickTallyExplained";
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
    case "many-trials":
      return explainManyTrials(finding);
    case "totals-only":
      return explainTotalsOnly(finding);
    case "pick-curve":
      return explainPickCurve(finding);
    case "half-picked":
      return explainHalfPicked(finding);
    case "pick-tally":
      return explainPickTally(finding);
    case "plants-needed":
      return explainPlantsNeeded(finding);
    case "smallest-change":
      return explainSmallestChange(finding);
    case "chance-to-see":
      return explainChanceToSee(finding);
    case "drawn-lots":
      return explainDrawnLots(finding);
    case "plain-numbers":
      return explainPlainNumbers(finding);
    case "looked-over":
      return explainLookedOver(finding);
  }
}
