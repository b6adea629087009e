import type { ManyTreatments, TreatmentFound } from "../../nouns/findings/manyTreatments";
import { isKnown } from "../../nouns/known";
import type { TellableFinding } from "../../nouns/report";
import type { Verdict } from "../../nouns/verdict";
import { moreOrLess } from "../moreOrLess";
import { percentText } from "../percent";
import { rangeSentences } from "../rangeSentences";
import { sentenceStart } from "../sentenceStart";
import { shortLabel } from "../shortLabel";
import { tell } from "../tell";
import { treatmentRange } from "../treatmentRange";
import { splitSentences } from "./splitSentences";

/**
 * What came out. The range of two treatments is told before the verdict that rests on it; several treatments are told
 * one by one, in whole sentences where a cell has only catchwords.
 */
export function findingSentences(finding: TellableFinding): readonly string[] {
  const told = splitSentences(tell(finding).finding());
  const [first = "", ...rest] = told;
  if (finding.finding === "two-treatments") return [first, ...rangeSentences(finding), ...rest];
  if (finding.finding !== "many-treatments" || finding.nothingIn !== null) return told;
  return [first, ...(finding.usual === null ? pairs(finding) : againstUsual(finding, finding.usual))];
}

function againstUsual({ treatments, worthwhile }: ManyTreatments, usual: string): readonly string[] {
  return treatments.flatMap((treatment) =>
    treatment.isUsual ? [] : oneSentences(treatment, shortLabel(usual), percentText(worthwhile.size)),
  );
}

function oneSentences({ name, againstUsual: one }: TreatmentFound, usual: string, enough: string): readonly string[] {
  const label = sentenceStart(shortLabel(name));
  if (one === null) return [`${label} had no usable plants.`];
  const change = isKnown(one.change) ? moreOrLess(one.change) : null;
  const gave = `${label} gave ${change === null ? `as much per plant as ${usual}` : `${change} per plant than ${usual}`}.`;
  return [gave, `The true change may be ${treatmentRange(one)}, ${means(one.verdict, enough)}.`];
}

/** A verdict as the end of a sentence that told the range (METHODS 6.1). */
function means(verdict: Verdict, enough: string): string {
  switch (verdict) {
    case "up-enough":
    case "down-enough":
      return "all of it enough to matter";
    case "up-small":
    case "down-small":
      return `all of it below the ${enough} that would matter`;
    case "up-unclear":
    case "down-unclear":
      return "so how much is still open";
    case "level":
      return `so they came out less than ${enough} apart`;
    case "leaning-up":
    case "leaning-down":
      return "but so few plants are only a hint";
    case "few":
      return "but so few plants cannot settle it";
    default:
      return "so it is not settled";
  }
}

/** The pairs that were shown to differ, and what holds for the rest. */
function pairs(found: ManyTreatments): readonly string[] {
  const all = found.pairs();
  const shown = all.filter(({ pValue }) => isKnown(pValue) && pValue < 1 - found.confidence);
  const told = shown.map(
    ({ higher, lower }) => `${sentenceStart(shortLabel(higher))} gave more than ${shortLabel(lower)}.`,
  );
  const open = all.length - shown.length;
  if (open === 0) return told;
  const rest =
    shown.length === 0 ? "This trial cannot tell any of them apart." : "The other pairs cannot be told apart here.";
  return [...told, rest];
}
