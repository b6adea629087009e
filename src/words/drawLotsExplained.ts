import type { Explanation } from "../nouns/explanation";
import type { DrawnLots } from "../nouns/findings/drawnLots";
import { sizeText, tellDrawnLots } from "./drawLots";
import { listText } from "./list";
import { lookOutFor } from "./lookOutFor";
import { sentences } from "./sentences";
import { shorterLabel } from "./shortLabel";

/** DRAWLOTS' finding in plain words (METHODS 9.1). */
export function explainDrawnLots(found: DrawnLots): Explanation {
  const told = tellDrawnLots(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: sentences(`${sizeText(found)}.`, names(found), bedsSentence(found)),
    luck: [
      "By lot, each treatment has an equal chance of every good spot.",
      "Some luck is left: that is why one plant each is never enough.",
    ],
    lookOutFor: lookOutFor(found.cautions()),
    next: next(found),
    workings: [
      `${found.beds === null ? "The list is shuffled" : "Each bed is shuffled on its own"} by the rule of Fisher and Yates, every order equally likely.`,
      "Chance comes from xoshiro128** (Blackman & Vigna), begun from the draw number.",
    ],
  };
}

const mostNames = 8;

/** A long list is cut, so that the sentence stays short. */
function names({ treatments }: DrawnLots): string {
  const short = treatments.slice(0, mostNames).map((name) => shorterLabel(name, 2));
  const rest = treatments.length - short.length;
  return `They are ${listText(rest > 0 ? [...short, `${rest} more`] : short)}.`;
}

function bedsSentence({ treatments, plantsEach, beds }: DrawnLots): string {
  if (beds === null) return "";
  const each = plantsEach / beds;
  return each === 1
    ? "Every bed holds one of each."
    : `Every bed holds ${each} of each, ${each * treatments.length} in all.`;
}

function next({ drawNumber }: DrawnLots): readonly string[] {
  if (drawNumber === null) return ["Type the number as the third argument: the list appears."];
  return ["Copy the list as values; keep the number.", "Put each label on its stake before you plant."];
}
