import type { Told } from "../nouns/explanation";
import type { ManyTreatments, TreatmentFound } from "../nouns/findings/manyTreatments";
import { isKnown } from "../nouns/known";
import { amountText } from "./amount";
import { listText } from "./list";
import { manyHeadline } from "./manyHeadline";
import { moreOrLess } from "./moreOrLess";
import { sentenceStart } from "./sentenceStart";
import { sentences } from "./sentences";
import { shortLabel } from "./shortLabel";
import { treatmentRange } from "./treatmentRange";
import { verdictText } from "./verdict";

/** COMPAREMANY's finding as a cell tells it (METHODS 9.1): each treatment against the usual, the highest first. */
export function tellManyTreatments(found: ManyTreatments): Told {
  return { finding: () => finding(found), say: () => say(found) };
}

function finding(found: ManyTreatments): string {
  const { usual, treatments, nothingIn } = found;
  if (nothingIn !== null) return `No answer: no usable plants in ${shortLabel(nothingIn)}.`;
  if (usual === null) return sentences(`${averages(found)}.`, `${manyHeadline(found)}.`);
  return sentences(`${averages(found)}.`, ...treatments.filter(({ isUsual }) => !isUsual).map(againstUsual));
}

/** "Straw 4390, Grass clippings 3370, Woodchip 3070 and Bare soil 3020 a plant". */
function averages({ treatments, unit }: ManyTreatments): string {
  const known = treatments.flatMap(({ name, mean, meanBedsRemoved }) => {
    const height = meanBedsRemoved ?? mean;
    return isKnown(height) ? [`${shortLabel(name)} ${amountText(height, unit)}`] : [];
  });
  return `${sentenceStart(listText(known))} a plant`;
}

/** "Straw: 46 % more than the usual. Up, enough to matter." */
function againstUsual({ name, againstUsual: found }: TreatmentFound): string {
  const label = sentenceStart(shortLabel(name));
  if (found === null) return `${label}: no usable plants.`;
  const change = isKnown(found.change) ? `${moreOrLess(found.change) ?? "level"}, ` : "";
  return `${label}: ${change}${verdictText(found.verdict).replace(/^./, (first) => first.toLowerCase())}.`;
}

function say(found: ManyTreatments): string {
  const { usual, treatments } = found;
  const front = treatments.find(({ againstUsual: one }) => one?.verdict.startsWith("up-") === true);
  if (usual === null || found.nothingIn !== null) return "";
  if (front?.againstUsual === null || front === undefined || !isKnown(front.againstUsual.change)) {
    return `In our trial, no treatment was shown to give more than ${shortLabel(usual)}.`;
  }
  const name = sentenceStart(shortLabel(front.name));
  const gave = `${name} gave ${moreOrLess(front.againstUsual.change) ?? "as much"} per plant than ${shortLabel(usual)} here.`;
  return sentences(gave, `The true gain may be ${treatmentRange(front.againstUsual)}.`);
}
