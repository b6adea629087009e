import type { Finding } from "../../nouns/finding";
import type { PerPlant } from "../../nouns/findings/perPlant";
import type { UpDown } from "../../nouns/findings/upDown";
import { isKnown, type Known } from "../../nouns/known";
import { amountText } from "../../words/amount";
import { barsPicture } from "./bars";
import { curvesPicture } from "./curves";
import { halvesPicture } from "./halves";
import type { Picture } from "./picture";
import { plantsPicture } from "./plants";
import { totalsPicture } from "./totals";
import { treatmentsPicture } from "./treatments";
import { trialsPicture } from "./trials";
import { unevenPicture } from "./uneven";
import { worthPicture } from "./worth";

/** The picture that goes with a finding; null where there is nothing to draw. */
export function pictureOf(finding: Finding): Picture | null {
  switch (finding.finding) {
    case "two-treatments":
      return plantsPicture(finding);
    case "up-down":
      return upDownPicture(finding);
    case "per-plant":
      return perPlantPicture(finding);
    case "unevenness":
      return unevenPicture(finding);
    case "pick-curve":
      return curvesPicture(finding);
    case "half-picked":
      return halvesPicture(finding);
    case "many-treatments":
      return treatmentsPicture(finding);
    case "many-trials":
      return trialsPicture(finding);
    case "totals-only":
      return totalsPicture(finding);
    case "worth-it":
      return worthPicture(finding);
    default:
      return null;
  }
}

function upDownPicture({ names, unit, usualMean, triedMean }: UpDown): Picture {
  const bars = [
    { name: names.usual ?? "The usual", value: usualMean, text: amountText(usualMean, unit), look: "usual" },
    { name: names.tried ?? "The new", value: triedMean, text: amountText(triedMean, unit), look: "new" },
  ] as const;
  return barsPicture(bars, "The two averages", "The upper bar is the base: 100 %.");
}

function perPlantPicture(found: PerPlant): Picture | null {
  const bar = (name: string, value: Known, look: "usual" | "new") =>
    isKnown(value) ? [{ name, value, text: amountText(value, found.unit), look }] : [];
  const bars = [
    ...bar("Per plant that lived", found.perSurvivingPlant, "new"),
    ...bar("Per plant set out", found.perPlantSetOut, "usual"),
  ];
  if (bars.length === 0 || found.perSurvivingPlant === found.perPlantSetOut) return null;
  return barsPicture(bars, "Per plant, by the two rules for lost plants", "They differ by the plants that were lost.");
}
