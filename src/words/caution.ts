import type { Caution } from "../nouns/caution";
import type { CautionLine } from "../nouns/explanation";
import type { Place } from "../nouns/place";
import { counted } from "./counted";
import { farFromTheRest } from "./farFromTheRest";
import { fewPlantsSentences } from "./fewPlantsSentences";
import { lossSentences } from "./lossSentences";
import { percentText } from "./percent";
import { placeNamed } from "./place";
import { sentenceStart } from "./sentenceStart";
import { shortLabel } from "./shortLabel";
import { timesText, wrongTimesText } from "./times";

/** One caution in words (METHODS 9.2), with its code for tests and order. */
export function cautionLine(caution: Caution): CautionLine {
  return { code: caution.caution, sentence: sentence(caution) };
}

function sentence(caution: Caution): string {
  switch (caution.caution) {
    case "C01":
      return fewPlantsSentences(caution);
    case "C02":
      return caution.listedTwice ? listedTwice : inHereTwice;
    case "C03":
      return lossSentences(caution);
    case "C05":
      return weakBase[caution.because];
    case "C06":
      return farFromTheRest(caution.places);
    case "C07":
      return shakierAverage(caution.name, caution.role);
    case "C09":
      return stillCropping(caution.name, caution.share);
    case "C14":
      return marksRead(caution.count);
    case "C15":
      return zerosFound(caution.zeros);
    case "C16":
      return notThatManyTimes(caution.change);
    case "C20":
      return `${counted(caution.count, "date")} could not be read for certain.`;
    case "C21":
      return `This rests on one plant, in ${placeNamed(caution.place)}. Without it, the result is not settled.`;
    case "C27":
      return `${percentText(caution.unevenness)} unevenness is a general guess; last year's plants would be better.`;
    case "C35":
      return `${sentenceStart(placeNamed(caution.place))} equals the average of those above. Is it an average row?`;
    case "C36":
      return `This workbook holds ${caution.comparisons} comparisons. Even if nothing differed, luck may give a winner.`;
    case "C38":
      return rowsLeftOut(caution.places);
    default:
      return fixed[caution.caution];
  }
}

const inHereTwice =
  "Some plants are in here more than once. Add up each plant's picks first, so each plant counts once.";

const listedTwice = "Some plants stand more than once in all_plants. Each was counted once, as it is listed first.";

const weakBase = {
  little: "The usual plants bore almost nothing, so a percent means little. Give the amounts.",
  unsteady: "The usual plants are too few or too uneven for a percent to mean much. Give the amounts.",
} as const;

/** The cautions whose words never change. */
const fixed: Readonly<
  Record<
    | "C04"
    | "C10"
    | "C11"
    | "C12"
    | "C13"
    | "C17"
    | "C18"
    | "C22"
    | "C25"
    | "C28"
    | "C29"
    | "C30"
    | "C31"
    | "C32"
    | "C34"
    | "C37"
    | "C39",
    string
  >
> = {
  C04: "About the lost plants: was it the treatment or an accident? The answer decides how to count them.",
  C10: "If you chose which plants got which, your choice may be the cause.",
  C11: "You planted in beds. Compare within them: that one counts, whatever it shows.",
  C12: "One place, one season.",
  C13: "Totals hide how plants differed; nothing here measures luck.",
  C17: "All plants of a treatment have equal values. Copied?",
  C18: "Each treatment sits in its own bed, so bed and treatment cannot be told apart.",
  C22: "Two checks for luck do not agree here. Call it close, and try again.",
  C25: "Prices and labour are taken as certain. Storage, waste and your time count only if you put them in.",
  C28: "Under four plants each cannot settle anything.",
  C29: "More likely to miss a real change than to see it.",
  C30: "When a small trial finds a gain, the gain is often smaller in truth.",
  C31: "The treatments started with different seedlings, so this compares seedlings as well.",
  C32: "Several things changed at once; the trial cannot say which did it.",
  C34: "Choose your main measure before harvest. If you choose the one that looks good, you choose luck.",
  C37: "These are totals, not amounts per plant. Give plants_each if the treatments differ in plants.",
  C39: "This takes the gain as alike in all of them.",
};

function shakierAverage(name: string | null, role: "usual" | "new"): string {
  const label = shortLabel(name ?? "");
  return `Plants of ${label === "" ? `the ${role}` : label} vary much more, so their average is shakier.`;
}

/** METHODS' own sentence; the picks of the last week tell nothing of how long the plants would have gone on. */
function stillCropping(name: string | null, share: number): string {
  const label = shortLabel(name ?? "");
  const who = label === "" ? "The plants were" : `${sentenceStart(label)} was`;
  const early = "If you stop now, the early one looks better. Pick and weigh the small fruit of all.";
  return `${who} still cropping: ${percentText(share)} came in the last week. ${early}`;
}

function marksRead(count: number): string {
  if (count === 1) return "1 cell had a unit or mark typed in; it was read as a number.";
  return `${count} cells had units or marks typed in; they were read as numbers.`;
}

function zerosFound(zeros: number): string {
  const empty = zeros === 1 ? "If that cell is empty" : "If those cells are empty";
  return `${counted(zeros, "zero")} found. ${empty}, type “lost” or “not weighed”.`;
}

function notThatManyTimes(change: number): string {
  return `Up ${percentText(change)} means ${timesText(change)} times as many, not ${wrongTimesText(change)} times.`;
}

function rowsLeftOut(places: readonly Place[]): string {
  const [first, ...others] = places;
  if (first === undefined) return "";
  const left = others.length === 0 ? "One row was" : `${places.length} rows were`;
  return `${left} left out, first at ${placeNamed(first)}: both averages must be numbers above 0.`;
}
