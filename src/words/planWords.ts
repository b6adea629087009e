import type { PlanBasis } from "../nouns/findings/planning";
import { counted } from "./counted";
import { percentText } from "./percent";
import { sentences } from "./sentences";

/** How much like plants differ, and how the trial is laid out, for the plans' part "compared". */
export function basisSentences({ unevenness, treatments, beds }: PlanBasis): string {
  return sentences(
    `Plants treated alike differ by ${percentText(unevenness)}.`,
    treatments === 2 ? "" : `There are ${counted(treatments, "treatment")}, the usual among them.`,
    bedsSentence(beds),
  );
}

function bedsSentence(beds: PlanBasis["beds"]): string {
  if (beds === null) return "";
  return beds === "one each"
    ? "Each bed holds one of each."
    : `There are ${counted(beds, "bed")}, and each holds as many of every treatment.`;
}

/** How a plan's chance is worked out, with its source, for the part "workings". */
export function planWorkings({ treatments }: PlanBasis): readonly string[] {
  const shared = treatments === 2 ? "" : `, shared by ${treatments - 1} comparisons`;
  return [
    `Chance to see it: the power of a t test, two-sided at 5 %${shared}.`,
    "The plants are taken to differ by that share of each average (van Belle & Millard).",
  ];
}
