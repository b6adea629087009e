import type { Explanation } from "../nouns/explanation";
import type { SmallestChange } from "../nouns/findings/planning";
import { isKnown } from "../nouns/known";
import { counted } from "./counted";
import { lookOutFor } from "./lookOutFor";
import { planCall } from "./planCall";
import { basisSentences, planWorkings } from "./planWords";
import { tellSmallestChange } from "./smallestChange";

/** SMALLESTCHANGE's finding in plain words (METHODS 9.1). */
export function explainSmallestChange(found: SmallestChange): Explanation {
  const told = tellSmallestChange(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: `${counted(found.plantsEach, "plant")} of each. ${basisSentences(found)}`,
    luck: isKnown(found.change)
      ? ["If the plants differ more than that, even a change of this size is often missed."]
      : [],
    lookOutFor: lookOutFor(found.cautions()),
    next: next(found),
    workings: planWorkings(found),
  };
}

function next(found: SmallestChange): readonly string[] {
  const more = "To see a smaller change, grow more plants or use beds with one of each.";
  if (!isKnown(found.change)) return [more];
  const call = planCall({ ...found, change: found.change / 2, beds: found.beds });
  return [more, `For a change half as big, type ${call}.`];
}
