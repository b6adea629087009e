import type { Told } from "../nouns/explanation";
import type { PlantsNeeded } from "../nouns/findings/planning";
import { isKnown } from "../nouns/known";
import { percentText, signedPercent } from "./percent";
import { plainNumber } from "./plainNumber";

/** PLANTSNEEDED's finding as a cell tells it (METHODS 9.1). */
export function tellPlantsNeeded(found: PlantsNeeded): Told {
  return { finding: () => finding(found), say: () => say(found) };
}

export function wanted({ change }: PlantsNeeded): string {
  return `a true change of ${signedPercent(change)}`;
}

function finding(found: PlantsNeeded): string {
  const { setOut, inAll, losses } = found;
  if (!isKnown(setOut) || !isKnown(inAll)) return "It would take more than 500 plants of each, which is not practical.";
  const allows = losses === 0 ? "That allows for no losses." : `That allows for ${percentText(losses)} lost.`;
  const plants = `set out ${plainNumber(setOut)} plants of each, ${plainNumber(inAll)} in all`;
  return `For ${wanted(found)}, ${plants}. ${allows}`;
}

function say(found: PlantsNeeded): string {
  const { setOut, inAll } = found;
  if (!isKnown(setOut) || !isKnown(inAll))
    return `To see ${wanted(found)}, we would need more plants than we can grow.`;
  return `To see ${wanted(found)}, we need ${plainNumber(setOut)} plants of each, ${plainNumber(inAll)} in all.`;
}
