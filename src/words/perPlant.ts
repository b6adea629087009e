import type { Told } from "../nouns/explanation";
import type { PerPlant } from "../nouns/findings/perPlant";
import { isKnown } from "../nouns/known";
import { absenceText } from "./absence";
import { amountText } from "./amount";
import { counted } from "./counted";
import { sentenceStart } from "./sentenceStart";
import { sentences } from "./sentences";
import { shortLabel } from "./shortLabel";

/** PERPLANT's finding as a cell tells it (METHODS 9.1). */
export function tellPerPlant(found: PerPlant): Told {
  return { finding: () => finding(found), say: () => (found.fromTotal ? finding(found) : say(found)) };
}

function finding(found: PerPlant): string {
  const { unit, perPlant, perPlantSetOut, perSurvivingPlant, setOut } = found;
  if (!isKnown(perPlant)) return `No average: ${absenceText(perPlant)}.`;
  const average = amountText(perPlant, unit);
  if (found.fromTotal)
    return `${amountText(found.total, unit)} from ${counted(setOut, "plant")} is ${average} per plant set out.`;
  if (found.rule === "count as zero" && anyLost(found) && isKnown(perSurvivingPlant)) {
    const lived = amountText(perSurvivingPlant, unit);
    return `${who(found)} gave ${average} per plant with lost plants as zero, and ${lived} per plant that lived.`;
  }
  if (!anyLost(found) && isKnown(perPlantSetOut))
    return `${who(found)} gave ${average} per plant, from ${counted(setOut, "plant")}.`;
  return sentences(`${who(found)} gave ${average} per plant counted${perSetOut(found)}.`, setOutUnknown(found));
}

function perSetOut({ perPlantSetOut, unit }: PerPlant): string {
  return isKnown(perPlantSetOut) ? `, and ${amountText(perPlantSetOut, unit)} per plant set out` : "";
}

function setOutUnknown({ perPlantSetOut }: PerPlant): string {
  if (isKnown(perPlantSetOut) || perPlantSetOut.absent !== "some-not-recorded") return "";
  return `Per plant set out is unknown, as ${countedWas(perPlantSetOut.count)} not recorded.`;
}

function say(found: PerPlant): string {
  if (!isKnown(found.perPlant)) return "";
  const lost = isKnown(found.lost) && found.lost > 0 ? lostText(found.lost, found.rule) : "";
  const average = amountText(found.perPlant, found.unit);
  return `${who(found)} gave us ${average} a plant: ${counted(found.counted, "plant")} counted${lost}.`;
}

function lostText(lost: number, rule: PerPlant["rule"]): string {
  return rule === "leave out" ? `, and ${lost} lost` : `, with the ${lost} lost as zero`;
}

export function anyLost({ lost }: PerPlant): boolean {
  return isKnown(lost) && lost > 0;
}

function who({ name }: PerPlant): string {
  const label = shortLabel(name ?? "");
  return label === "" ? "The plants" : sentenceStart(label);
}

function countedWas(count: number): string {
  return count === 1 ? "1 plant was" : `${count} plants were`;
}
