import type { Told } from "../nouns/explanation";
import type { AgainstUsual, ManyTreatments } from "../nouns/findings/manyTreatments";
import { isKnown } from "../nouns/known";
import type { Verdict } from "../nouns/verdict";
import { amountText } from "./amount";
import { type DirectionWords, directionWords } from "./direction";
import { inSentences } from "./inSentences";
import { manySay } from "./manySay";
import { moreOrLess } from "./moreOrLess";
import { pairsShown } from "./pairsShown";
import { sentenceStart } from "./sentenceStart";
import { sentences } from "./sentences";
import { settledChange } from "./settledChange";
import { shortLabel } from "./shortLabel";

/** COMPAREMANY's finding as a cell tells it (METHODS 9.1): the averages, the highest first, and what came out. */
export function tellManyTreatments(found: ManyTreatments): Told {
  return { finding: () => finding(found), say: () => manySay(found) };
}

function finding(found: ManyTreatments): string {
  const { usual, nothingIn } = found;
  if (nothingIn !== null) return `No answer: no usable plants in ${shortLabel(nothingIn)}.`;
  const told = usual === null ? pairsShown(found) : verdicts(found, shortLabel(usual));
  return sentences(manyAverages(found), ...told, withoutPlants(found));
}

/**
 * "Straw 4390 g, Grass clippings 3370 g, Woodchip 3070 g and Bare soil 3020 g a plant." A name's own figure is kept
 * apart.
 */
export function manyAverages({ treatments, unit }: ManyTreatments): string {
  const known = treatments.flatMap(({ name, mean, meanBedsRemoved }) => {
    const height = meanBedsRemoved ?? mean;
    return isKnown(height) ? [{ label: shortLabel(name), height }] : [];
  });
  const joint = known.some(({ label }) => /\d$/.test(label)) ? ": " : " ";
  return inSentences(
    known.map(({ label, height }) => `${label}${joint}${amountText(height, unit)}`),
    (list) => `${sentenceStart(list)} a plant.`,
  );
}

/** Every verdict with the treatments that have it, in the order of their averages. */
function verdicts({ treatments, worthwhile }: ManyTreatments, usual: string): readonly string[] {
  const told = treatments.flatMap(({ name, againstUsual: against }): readonly Against[] =>
    against === null ? [] : [{ name: shortLabel(name), against }],
  );
  const kinds = [...new Set(told.map(({ against }) => against.verdict))];
  return kinds.map((kind) => {
    const those = told.filter(({ against }) => against.verdict === kind);
    const size = decided[kind];
    return size === undefined
      ? undecided(those, ending(kind, usual, directionWords(worthwhile.lessWanted)))
      : sentences(...those.map((one) => gave(one, usual, size)));
  });
}

/** A treatment with plants, set against the usual. */
interface Against {
  readonly name: string;
  readonly against: AgainstUsual;
}

/** "Straw gave 46 % more than Bare soil: enough to matter." */
function gave({ name, against }: Against, usual: string, size: string): string {
  return `${sentenceStart(name)} gave ${withoutTimes(settledChange(against))} than ${usual}: ${size}.`;
}

const decided: Readonly<Partial<Record<Verdict, string>>> = {
  "up-enough": "enough to matter",
  "up-small": "too little to matter",
  "up-unclear": "how much more is still open",
  "down-enough": "enough to matter",
  "down-small": "too little to matter",
  "down-unclear": "how much less is still open",
};

/** "Grass clippings (12 % more) and Woodchip (2 % more) are not settled." */
function undecided(those: readonly Against[], end: string): string {
  const named = those.map(({ name, against }) => {
    const change = changeText(against);
    return change === null ? name : `${name} (${change})`;
  });
  const noRange = those.every(({ against }) => against.verdict === "none" && isKnown(against.change));
  const one = noRange ? "cannot be judged, as plants treated alike do not differ" : end;
  const several = one.replace(/^is /, "are ").replace(/^has /, "have ");
  return inSentences(named, (list, items) => `${sentenceStart(list)} ${items === 1 ? one : several}.`);
}

/** What is said of one treatment. */
function ending(verdict: Verdict, usual: string, { ahead, behind }: DirectionWords): string {
  switch (verdict) {
    case "level":
      return `came out close to ${usual}`;
    case "open-up":
      return "is not settled, but may be up";
    case "open-down":
      return "is not settled, but may be down";
    case "leaning-up":
      return `is ${ahead} so far, but so few plants are only a hint`;
    case "leaning-down":
      return `is ${behind} so far, but so few plants are only a hint`;
    case "few":
      return "has too few plants to tell";
    case "none":
      return `has no percent against ${usual}`;
    default:
      return "is not settled";
  }
}

function changeText({ change }: AgainstUsual): string | null {
  const shown = isKnown(change) ? moreOrLess(change) : null;
  return shown === null ? null : withoutTimes(shown);
}

/** "200 % more (3 times as much)" in its short form. */
function withoutTimes(change: string): string {
  return change.replace(/ \(.*/, "");
}

/** Treatments of which every plant is lost or not recorded. */
function withoutPlants({ treatments }: ManyTreatments): string {
  const names = treatments.filter(({ plants }) => plants.length === 0).map(({ name }) => shortLabel(name));
  return inSentences(
    names,
    (list, items) => `${sentenceStart(list)} ${items === 1 ? "has" : "have"} no usable plants.`,
  );
}
