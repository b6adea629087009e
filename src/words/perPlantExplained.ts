import type { Explanation } from "../nouns/explanation";
import type { PerPlant } from "../nouns/findings/perPlant";
import { isKnown, type Known } from "../nouns/known";
import { amountText } from "./amount";
import { counted } from "./counted";
import { lookOutFor } from "./lookOutFor";
import { anyLost, tellPerPlant } from "./perPlant";

/** PERPLANT's finding in plain words (METHODS 9.1). */
export function explainPerPlant(found: PerPlant): Explanation {
  const told = tellPerPlant(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: ["One average alone tells nothing about luck."],
    lookOutFor: lookOutFor(found.cautions()),
    next: [
      anyLost(found) ? "Say which rule you used for lost plants." : "Set it beside the other way with COMPARETWO.",
    ],
    workings: workings(found),
  };
}

function compared({ fromTotal, setOut, lost, notRecorded, total, unit }: PerPlant): string {
  if (fromTotal) return `One season total of ${amountText(total, unit)} for ${counted(setOut, "plant")}.`;
  return `${counted(setOut, "plant")} set out, ${countText(lost)} lost, ${countText(notRecorded)} not recorded.`;
}

function workings(found: PerPlant): readonly string[] {
  const { total, counted: plants, unit, rule } = found;
  if (found.fromTotal) return ["A season total does not say how many plants were lost."];
  const sum = `Total ${amountText(total, unit)} over ${counted(plants, "plant")} counted.`;
  return anyLost(found)
    ? [sum, rule === "leave out" ? "Lost plants were left out." : "Lost plants were counted as zero."]
    : [sum];
}

function countText(count: Known): string {
  return isKnown(count) ? `${count}` : "an unknown number";
}
