import type { Told } from "../nouns/explanation";
import type { TreatmentUnevenness, Unevenness } from "../nouns/findings/unevenness";
import { type Absence, isKnown } from "../nouns/known";
import { counted } from "./counted";
import { percentText } from "./percent";

/** UNEVENNESS's finding as a cell tells it (METHODS 9.1). */
export function tellUnevenness(found: Unevenness): Told {
  return { finding: () => finding(found), say: () => say(found.all) };
}

function finding(found: Unevenness): string {
  const { unevenness, plants } = found.all;
  if (!isKnown(unevenness)) return whyUnknown(found, unevenness);
  const differed = `Plants treated alike differed by about ${percentText(unevenness)}.`;
  const range = rangeText(found.all);
  if (range === null) return differed;
  const few = plants <= 12 ? "just " : "";
  return `${differed} With ${few}${counted(plants, "plant")}, the true figure may be ${range}.`;
}

/** Several treatments may each have a reason of their own; with beds the reason is that of all plants together. */
function whyUnknown({ all, treatments, withinBeds }: Unevenness, { absent }: Absence): string {
  if (all.plants <= 1) return "One plant shows no unevenness. It takes two or more that were treated alike.";
  if (treatments.length > 1 && !withinBeds) {
    return "No treatment here shows unevenness. It takes two or more plants treated alike, and an average above 0.";
  }
  if (absent === "average-zero") return "The average is 0, so there is no share of it to take.";
  if (absent === "average-below-zero") return "The average is below 0, so there is no share of it to take.";
  return "With treatments and beds taken out, nothing is left to show unevenness. It takes more plants in each bed.";
}

export function rangeText({ range, unevenness }: TreatmentUnevenness): string | null {
  const { low, high } = range;
  if (unevenness === 0 || !isKnown(low) || !isKnown(high)) return null;
  return `${percentText(low)} to ${percentText(high)}`;
}

function say({ unevenness, plants }: TreatmentUnevenness): string {
  if (!isKnown(unevenness)) return "";
  return `Plants we treated alike differed by about ${percentText(unevenness)} (${counted(plants, "plant")}).`;
}
