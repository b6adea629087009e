import type { Told } from "../nouns/explanation";
import type { TreatmentUnevenness, Unevenness } from "../nouns/findings/unevenness";
import { isKnown } from "../nouns/known";
import { absenceText } from "./absence";
import { counted } from "./counted";
import { percentText } from "./percent";

/** UNEVENNESS's finding as a cell tells it (METHODS 9.1). */
export function tellUnevenness(found: Unevenness): Told {
  return { finding: () => finding(found.all), say: () => say(found.all) };
}

function finding(all: TreatmentUnevenness): string {
  const { unevenness, plants } = all;
  if (!isKnown(unevenness)) return whyUnknown(all);
  const differed = `Plants treated alike differed by about ${percentText(unevenness)}.`;
  const range = rangeText(all);
  if (range === null) return differed;
  const few = plants <= 12 ? "just " : "";
  return `${differed} With ${few}${counted(plants, "plant")}, the true figure may be ${range}.`;
}

function whyUnknown({ unevenness, plants }: TreatmentUnevenness): string {
  if (isKnown(unevenness)) return "";
  if (unevenness.absent === "average-zero") return "The average is 0, so there is no share of it to take.";
  if (unevenness.absent === "average-below-zero") return "The average is below 0, so there is no share of it to take.";
  if (plants <= 1) return "One plant shows no unevenness. It takes two or more that were treated alike.";
  return `Unevenness is unknown: ${absenceText(unevenness)}.`;
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
