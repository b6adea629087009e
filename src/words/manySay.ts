import type { AgainstUsual, ManyTreatments } from "../nouns/findings/manyTreatments";
import { sizeRangeText } from "./changeRange";
import { directionWords } from "./direction";
import { highestShown } from "./pairsShown";
import { sentenceStart } from "./sentenceStart";
import { sentences } from "./sentences";
import { settledChange } from "./settledChange";
import { shortLabel } from "./shortLabel";

/** "You can say" of several treatments (METHODS 6.4): the front-runner against the usual, or the pairs told apart. */
export function manySay(found: ManyTreatments): string {
  const { usual, nothingIn } = found;
  if (nothingIn !== null) return `We have no answer this season. We had no usable plants of ${shortLabel(nothingIn)}.`;
  if (usual !== null) return againstUsualSay(found, shortLabel(usual));
  const highest = highestShown(found);
  return highest === null ? "Our trial could not tell the treatments apart." : `In our trial, ${highest}.`;
}

function againstUsualSay({ treatments, worthwhile }: ManyTreatments, usual: string): string {
  const { lessWanted } = worthwhile;
  const inOrder = lessWanted ? treatments.toReversed() : treatments;
  const wanted = lessWanted ? ["down-", "up-"] : ["up-", "down-"];
  const kinds = [...wanted, lessWanted ? "leaning-down" : "leaning-up"];
  const front = kinds
    .map((kind) => inOrder.find(({ againstUsual: one }) => one?.verdict.startsWith(kind) === true))
    .find((one) => one !== undefined);
  if (front?.againstUsual === null || front === undefined) return noneShown(treatments, usual);
  const name = sentenceStart(shortLabel(front.name));
  return shown(front.againstUsual, { name, usual, lessWanted });
}

function noneShown(treatments: ManyTreatments["treatments"], usual: string): string {
  const verdicts = treatments.flatMap(({ againstUsual }) => againstUsual?.verdict ?? []);
  if (verdicts.every((verdict) => verdict === "none")) return "We have no answer in percent this season.";
  if (verdicts.every((verdict) => verdict === "level")) return `They all came out close to ${usual} here.`;
  return `Our trial could not tell any of them from ${usual}.`;
}

/** How the front-runner is spoken of. */
interface Spoken {
  readonly name: string;
  readonly usual: string;
  readonly lessWanted: boolean;
}

function shown(front: AgainstUsual, spoken: Spoken): string {
  const { name, usual, lessWanted } = spoken;
  const [way = "", size = ""] = front.verdict.split("-");
  const more = way === "up" ? "more" : "less";
  if (way === "leaning") {
    return `${name} is ${lessWanted ? "lower than" : "ahead of"} ${usual} so far. With so few plants, it is only a hint.`;
  }
  if (size === "unclear") return `${name} gave ${more} than ${usual} in our trial. How much ${more} is still open.`;
  if (size === "small") return `${name} gave a little ${more} than ${usual} here. It was not enough for us to act on.`;
  return enough(front, spoken);
}

function enough(front: AgainstUsual, { name, usual, lessWanted }: Spoken): string {
  const { rise, fall } = directionWords(lessWanted);
  const size = settledChange(front).replace(/more|less/, "$& per plant");
  const range = sizeRangeText(front.changeRange);
  return sentences(
    `${name} gave ${size} than ${usual} here.`,
    range === null ? "" : `The true ${front.verdict === "up-enough" ? rise : fall} may be ${range}.`,
  );
}
