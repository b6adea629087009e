import type { Told } from "../nouns/explanation";
import type { SmallestChange } from "../nouns/findings/planning";
import { isKnown } from "../nouns/known";
import { outOfHundred } from "./chance";
import { counted } from "./counted";
import { percentSize } from "./percent";

/** SMALLESTCHANGE's finding as a cell tells it (METHODS 9.1). */
export function tellSmallestChange(found: SmallestChange): Told {
  return { finding: () => finding(found), say: () => say(found) };
}

function finding(found: SmallestChange): string {
  const { change, plantsEach, chance, direction } = found;
  const often = `in ${outOfHundred(chance)} of 100 such trials`;
  const size = `With ${counted(plantsEach, "plant")} each`;
  if (isKnown(change)) return `${size}, ${changeText(found, change)} shows ${often}. Smaller ones show less often.`;
  return direction === "more"
    ? `${size}, not even a gain of 499 % shows ${often}.`
    : `${size}, not even a loss of 99 % shows ${often}.`;
}

function changeText({ direction }: SmallestChange, change: number): string {
  return `a ${direction === "more" ? "gain" : "loss"} of ${percentSize(change)}`;
}

function say(found: SmallestChange): string {
  const { change, plantsEach } = found;
  const size = `With ${counted(plantsEach, "plant")} each`;
  if (!isKnown(change)) return `${size}, our trial is too small to show much.`;
  return `${size}, our trial is likely to show ${changeText(found, change)}, but not much less.`;
}
