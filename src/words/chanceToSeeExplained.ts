import type { Explanation } from "../nouns/explanation";
import type { ChanceToSee } from "../nouns/findings/planning";
import { othersOfHundred } from "./chance";
import { tellChanceToSee } from "./chanceToSee";
import { counted } from "./counted";
import { lookOutFor } from "./lookOutFor";
import { planCall } from "./planCall";
import { basisSentences, planWorkings } from "./planWords";

/** CHANCETOSEE's finding in plain words (METHODS 9.1). */
export function explainChanceToSee(found: ChanceToSee): Explanation {
  const told = tellChanceToSee(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: `${counted(found.plantsEach, "plant")} of each. ${basisSentences(found)}`,
    luck: luck(found),
    lookOutFor: lookOutFor(found.cautions()),
    next: next(found),
    workings: planWorkings(found),
  };
}

function luck({ change, chanceToSee }: ChanceToSee): readonly string[] {
  if (change === 0) return ["That is luck alone: the plants just fell that way."];
  return [`The other ${othersOfHundred(chanceToSee)} of 100 would not show it, by bad luck.`];
}

function next(found: ChanceToSee): readonly string[] {
  if (found.change === 0) return ["Give the change you hope for, such as 20%."];
  if (found.chanceToSee >= 0.8) return ["The plan is big enough for a change of that size."];
  return [`For 80 of 100, see how many plants it takes: ${planCall(found)}.`];
}
