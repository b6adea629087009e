import type { ManyTreatments, PairFound } from "../nouns/findings/manyTreatments";
import { counted } from "./counted";
import { listText } from "./list";
import { sentenceStart } from "./sentenceStart";
import { shortLabel } from "./shortLabel";
import { wordCount } from "./wordCount";

const mostSentences = 3;
/** Three fewer than a sentence may have (METHODS 6.3): "In our trial," may stand before it. */
const mostWords = 22;

/**
 * The pairs that are shown to differ, a sentence for each of the three highest treatments, and how many are not
 * settled.
 */
export function pairsShown(found: ManyTreatments): readonly string[] {
  const pairs = found.pairs();
  const shown = pairs.filter((pair) => isShown(pair, found));
  const told = above(found.treatments, shown);
  const more = told.slice(mostSentences).reduce((sum, { below }) => sum + below.length, 0);
  const open = pairs.length - shown.length;
  return [
    ...told.slice(0, mostSentences).map((one) => `${sentenceStart(gaveMore(one))}.`),
    ...(more === 0 ? [] : [`Of the others, ${counted(more, "pair")} ${more === 1 ? "is" : "are"} shown to differ.`]),
    ...(open === 0 ? [] : [notSettled(open, shown.length)]),
  ];
}

/** "Straw gave more than Woodchip and Bare soil", of the highest treatment that is shown to; null where none is. */
export function highestShown(found: ManyTreatments): string | null {
  const [first] = above(
    found.treatments,
    found.pairs().filter((pair) => isShown(pair, found)),
  );
  return first === undefined ? null : gaveMore(first);
}

/** Whether two treatments are shown to differ, at the confidence that all pairs have together. */
export function isShown({ pValue }: PairFound, { confidence }: ManyTreatments): boolean {
  return typeof pValue === "number" && pValue < 1 - confidence;
}

/** A treatment and those that it is shown to give more than. */
interface Above {
  readonly name: string;
  readonly below: readonly string[];
}

function above(treatments: ManyTreatments["treatments"], shown: readonly PairFound[]): readonly Above[] {
  return treatments
    .map(({ name }) => ({ name, below: shown.filter(({ higher }) => higher === name).map(({ lower }) => lower) }))
    .filter(({ below }) => below.length > 0);
}

function gaveMore({ name, below }: Above): string {
  const first = `${shortLabel(name)} gave more than`;
  const named = `${first} ${listText(below.map(shortLabel))}`;
  return wordCount(named) <= mostWords ? named : `${first} ${below.length} others`;
}

function notSettled(open: number, shown: number): string {
  if (shown > 0) return `${counted(open, "pair")} ${open === 1 ? "is" : "are"} not settled.`;
  return open === 1 ? "This trial cannot tell them apart." : `None of the ${open} pairs is settled.`;
}
