import type { Told } from "../nouns/explanation";
import type { DrawnLots } from "../nouns/findings/drawnLots";
import { counted } from "./counted";

/** What a cell says while no number was picked (METHODS 8.10). */
export const pickANumber = "Pick any number, such as the time on your watch. Keep it: the number makes the list again.";

/** DRAWLOTS' finding as a cell tells it (METHODS 9.1). */
export function tellDrawnLots(found: DrawnLots): Told {
  return { finding: () => finding(found), say: () => say(found) };
}

function finding(found: DrawnLots): string {
  if (found.drawNumber === null) return pickANumber;
  const drawn = `${sizeText(found)}, drawn with number ${numberText(found.drawNumber)}.`;
  return `${drawn} Plant exactly as listed: choosing or swapping afterwards undoes the draw.`;
}

function say(found: DrawnLots): string {
  if (found.drawNumber === null) return "";
  return `Lots were drawn for which plant got what, with number ${numberText(found.drawNumber)}: ${sizeText(found)}.`;
}

/** "4 treatments, 8 plants each, 8 beds". */
export function sizeText({ treatments, plantsEach, beds }: DrawnLots): string {
  const inBeds = beds === null ? "" : `, ${counted(beds, "bed")}`;
  return `${counted(treatments.length, "treatment")}, ${counted(plantsEach, "plant")} each${inBeds}`;
}

/** A draw number exactly as it is typed: no spaces between its digits. */
function numberText(drawNumber: number): string {
  return String(drawNumber);
}
