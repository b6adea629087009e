import type { Desk } from "../../answers/desk";
import type { Finding } from "../../nouns/finding";
import type { ChanceToSee, PlantsNeeded, SmallestChange } from "../../nouns/findings/planning";
import { isKnown, type Known } from "../../nouns/known";
import { planCurve } from "../plan/planFigures";
import { type PlanQuestion, USUAL_CHANCE } from "../plan/planQuestion";
import type { Picture } from "../plots/picture";
import { planPicture } from "../plots/plan";

/** The picture of a planning function's finding: its plan among smaller and bigger ones. */
export function planningPicture(finding: Finding, desk: Desk): Picture | null {
  switch (finding.finding) {
    case "plants-needed":
      return curvePicture(finding, finding.needed, desk);
    case "smallest-change":
    case "chance-to-see":
      return curvePicture(finding, finding.plantsEach, desk);
    default:
      return null;
  }
}

function curvePicture(finding: PlantsNeeded | SmallestChange | ChanceToSee, each: Known, desk: Desk): Picture | null {
  const hoped = isKnown(finding.change) ? finding.change : null;
  if (!isKnown(each) || hoped === null) return null;
  const points = planCurve(desk, questionOf(finding, hoped), each);
  const mine = points.find(({ plantsEach }) => plantsEach === each);
  return mine === undefined ? null : planPicture({ points, mine, hoped });
}

/** The plan of a finding; what the curve does not rest on is left at nothing. */
function questionOf(finding: PlantsNeeded | SmallestChange | ChanceToSee, hoped: number): PlanQuestion {
  const { treatments, beds, unevenness } = finding;
  const chance = finding.finding === "chance-to-see" ? USUAL_CHANCE : finding.chance;
  return { room: 0, ways: treatments, beds: beds ?? "none", unevenness, hoped, worthwhile: 0, chance };
}
