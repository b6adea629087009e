import type { ManyTreatments, TreatmentFound } from "../../nouns/findings/manyTreatments";
import { isKnown } from "../../nouns/known";
import type { TellableFinding } from "../../nouns/report";
import type { Verdict } from "../../nouns/verdict";
import { manyAverages } from "../manyTreatments";
import { moreOrLess } from "../moreOrLess";
import { pairsShown } from "../pairsShown";
import { percentText } from "../percent";
import { rangeSentences } from "../rangeSentences";
import { sentenceStart } from "../sentenceStart";
import { settledChange } from "../settledChange";
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
  const averages = splitSentences(manyAverages(finding));
  return [...averages, ...(finding.usual === null ? pairsShown(finding) : againstUsual(finding, finding.usual))];
}

function againstUsual({ treatments, worthwhile }: ManyTreatments, usual: string): readonly string[] {
  return treatments.flatMap((treatment) =>
    treatment.isUsual ? [] : oneSentences(treatment, shortLabel(usual), percentText(worthwhile.size)),
  );
}

function oneSentences({ name, againstUsual: one }: TreatmentFound, usual: string, enough: string): readonly string[] {
  const label = sentenceStart(shortLabel(name));
  if (one === null) return [`${label} had no usable plants.`];
  if (!isKnown(one.change) || one.verdict === "none") return [`For ${label} there is no answer in percent.`];
  const change = /^(up|down)-/.test(one.verdict) ? settledChange(one) : moreOrLess(one.change);
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
