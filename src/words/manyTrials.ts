import type { Told } from "../nouns/explanation";
import type { ManyTrials } from "../nouns/findings/manyTrials";
import { changeRangeText } from "./changeRange";
import { counted } from "./counted";
import { moreOrLess } from "./moreOrLess";
import { namesOf } from "./names";
import { percentText } from "./percent";
import { sentenceStart } from "./sentenceStart";
import { sentences } from "./sentences";
import { verdictText } from "./verdict";

/** MANYTRIALS' finding as a cell tells it (METHODS 9.1). */
export function tellManyTrials(found: ManyTrials): Told {
  return {
    finding: () => sentences(aheadSentence(found), rangeSentence(found), verdictSentence(found)),
    say: () => say(found),
  };
}

/** "Straw was ahead in 5 of 6 crops, by 34 % on average." */
function aheadSentence({ names, trials, ahead, behind, change, rowIs }: ManyTrials): string {
  const tried = sentenceStart(namesOf(names.usual, names.tried).tried);
  const size = moreOrLess(change)?.replace(/ (more|less)/, "") ?? null;
  if (trials.length === 1) return `${tried} gave ${moreOrLess(change) ?? "as much"} in one ${rowIs}.`;
  const [how, count] = change < 0 ? (["behind", behind] as const) : (["ahead", ahead] as const);
  const by = size === null ? "but level on average" : `by ${size} on average`;
  return `${tried} was ${how} in ${count} of ${counted(trials.length, rowIs)}, ${by}.`;
}

function rangeSentence({ changeRange }: ManyTrials): string {
  const range = changeRangeText(changeRange);
  return range === null ? "" : `The true figure may be ${range}.`;
}

function verdictSentence({ verdict, trials, worthwhile, rowIs }: ManyTrials): string {
  if (trials.length === 1) return `One ${rowIs} alone has no range here; compare its plants.`;
  if (verdict === "none") return "All gave the very same change, which is odd. Check the averages.";
  if (verdict.startsWith("leaning")) return `${counted(trials.length, rowIs)} are only a hint.`;
  if (verdict === "level") return `They came out close: less than ${percentText(worthwhile.size)} apart, either way.`;
  return `${verdictText(verdict)}.`;
}

function say(found: ManyTrials): string {
  const { trials, verdict } = found;
  if (trials.length === 1) return sentences(aheadSentence(found), "One is too few to say more.");
  const unsettled = verdict.startsWith("open") || verdict === "none" ? "It is not settled." : "";
  return sentences(aheadSentence(found), unsettled || rangeSentence(found));
}
