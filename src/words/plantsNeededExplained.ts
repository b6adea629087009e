import type { Explanation } from "../nouns/explanation";
import type { PlantsNeeded } from "../nouns/findings/planning";
import { isKnown } from "../nouns/known";
import { outOfHundred } from "./chance";
import { listText } from "./list";
import { lookOutFor } from "./lookOutFor";
import { percentText, signedPercent } from "./percent";
import { tellPlantsNeeded, wanted } from "./plantsNeeded";
import { basisSentences, planWorkings } from "./planWords";
import { sentences } from "./sentences";

/** PLANTSNEEDED's finding in plain words (METHODS 9.1). */
export function explainPlantsNeeded(found: PlantsNeeded): Explanation {
  const told = tellPlantsNeeded(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: sentences(aim(found), basisSentences(found)),
    luck: luck(found),
    lookOutFor: lookOutFor(found.cautions()),
    next: next(found),
    workings: planWorkings(found),
  };
}

function aim(found: PlantsNeeded): string {
  return `You want to see ${wanted(found)} in ${outOfHundred(found.chance)} of 100 such trials.`;
}

function luck({ setOut, worthwhile, ...found }: PlantsNeeded): readonly string[] {
  if (!isKnown(setOut)) return [];
  const missed = "If the true change is smaller, or the plants differ more, you are more likely to miss it.";
  const chanceEnough = found.chanceEnough();
  if (!isKnown(chanceEnough)) return [missed];
  const only = chanceEnough < 0.5 ? "only " : "";
  const enough = `It shows as enough to matter (${percentText(worthwhile.size)} or more)`;
  return [missed, `${enough} in ${only}${outOfHundred(chanceEnough)} of 100.`];
}

function next(found: PlantsNeeded): readonly string[] {
  const half = isKnown(found.setOut) ? found.smallestWithHalf() : found.setOut;
  const smaller = isKnown(half)
    ? [`Half as many plants would show only a change of ${signedPercent(half)} that often.`]
    : [];
  return [
    ...smaller,
    `If it does not fit, ${waysOut(found)}.`,
    "Or run it as a demonstration. Say what you saw, and that it settles nothing.",
  ];
}

function waysOut({ treatments, beds }: PlantsNeeded): string {
  const fewer = treatments > 2 ? ["take fewer treatments"] : [];
  const inBeds = beds === null ? ["use beds with one of each"] : [];
  return listText([...fewer, ...inBeds, "add a second season"], "or");
}
