import type { Told } from "../nouns/explanation";
import type { ChanceToSee } from "../nouns/findings/planning";
import { aboutOutOfHundred, outOfHundred } from "./chance";
import { counted } from "./counted";
import { signedPercent } from "./percent";

/** CHANCETOSEE's finding as a cell tells it (METHODS 9.1). */
export function tellChanceToSee(found: ChanceToSee): Told {
  return { finding: () => finding(found), say: () => say(found) };
}

function finding({ change, chanceToSee, chanceEnough }: ChanceToSee): string {
  const seen = aboutOutOfHundred(chanceToSee);
  if (change === 0) return `With no true change at all, ${seen} of 100 such trials would still show one.`;
  const enough = outOfHundred(chanceEnough);
  const found = `You would see a true change of ${signedPercent(change)} in ${seen} of 100 such trials`;
  return `${found}, and find it enough to matter in ${enough}.`;
}

function say({ change, plantsEach, chanceToSee }: ChanceToSee): string {
  const shown = `our trial would show a true change of ${signedPercent(change)}`;
  const often = `in ${aboutOutOfHundred(chanceToSee)} of 100 tries`;
  return `With ${counted(plantsEach, "plant")} each, ${shown} ${often}.`;
}
