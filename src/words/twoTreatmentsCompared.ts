import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { counted } from "./counted";
import { namesOf } from "./names";
import { sentenceStart } from "./sentenceStart";
import { sentences } from "./sentences";

/** What COMPARETWO compared: plants, pairs or beds, in which unit, and which plants are left out (METHODS 9.1). */
export function twoTreatmentsCompared(found: TwoTreatments): string {
  return sentences(whatSentence(found), lostSentence(found), notRecordedSentence(found), incompleteSentence(found));
}

function whatSentence({ usual, tried, pairs, asked, unit }: TwoTreatments): string {
  const names = namesOf(usual.name, tried.name);
  const inUnit = unit === null ? "" : `, as its total in ${unit}`;
  if (pairs === null) {
    const triedPlants = `${counted(tried.plants.length, "plant")} of ${names.tried}`;
    return `${triedPlants} against ${usual.plants.length} of ${names.usual}. Each plant counts once${inUnit}.`;
  }
  const sideBySide = `side by side in ${counted(pairs.complete, asked === "beds" ? "bed" : "pair")}`;
  return `${sentenceStart(names.tried)} and ${names.usual} ${sideBySide}. Each plant counts once${inUnit}.`;
}

function lostSentence({ usual, tried, lostPlants }: TwoTreatments): string {
  const lost = usual.lost.length + tried.lost.length;
  if (lost === 0) return "";
  const one = lost === 1;
  if (lostPlants === "count as zero")
    return `${one ? "The 1 lost plant counts" : `The ${lost} lost plants count`} as 0.`;
  return `${counted(lost, "lost plant")} ${one ? "is" : "are"} left out.`;
}

function notRecordedSentence({ usual, tried }: TwoTreatments): string {
  const missing = usual.notRecorded.length + tried.notRecorded.length;
  if (missing === 0) return "";
  return missing === 1
    ? "1 plant was not recorded and is left out."
    : `${missing} plants were not recorded and are left out.`;
}

function incompleteSentence({ pairs, asked }: TwoTreatments): string {
  if (pairs === null || pairs.incomplete === 0) return "";
  const left = counted(pairs.incomplete, asked === "beds" ? "bed" : "pair");
  return `${left} with a number missing ${pairs.incomplete === 1 ? "is" : "are"} left out.`;
}
