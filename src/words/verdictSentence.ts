import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { directionWords } from "./direction";
import { groupSize } from "./groupSize";
import { namesOf } from "./names";
import { percentText } from "./percent";
import { sentenceStart } from "./sentenceStart";
import { whyNoAnswer } from "./whyNoAnswer";

/** The verdict as the second half of a finding, after both averages and the change are told (METHODS 6.1). */
export function verdictSentence(found: TwoTreatments): string {
  const worthwhile = percentText(found.worthwhile.size);
  switch (found.verdict) {
    case "up-enough":
      return `The whole range is at least ${worthwhile} up, which is enough to matter.`;
    case "up-small":
      return `The whole range is up, but by less than the ${worthwhile} that would matter.`;
    case "up-unclear":
      return "The whole range is up. How much more is still open.";
    case "down-enough":
      return `The whole range is at least ${worthwhile} down, which is enough to matter.`;
    case "down-small":
      return `The whole range is down, but by less than the ${worthwhile} that would matter.`;
    case "down-unclear":
      return "The whole range is down. How much less is still open.";
    case "level":
      return `They came out close: less than ${worthwhile} apart, either way.`;
    case "open-up":
      return `It is not settled: there may be a ${mayBe(found, "up")}.`;
    case "open-down":
      return `It is not settled: there may be a ${mayBe(found, "down")}.`;
    case "open":
      return "This trial cannot tell them apart.";
    case "leaning-up":
    case "leaning-down":
      return hint(found);
    case "few":
      return `${groupSize(found)} cannot settle it.`;
    case "none":
      return whyNoAnswer(found);
  }
}

function hint(found: TwoTreatments): string {
  const { usual, tried, worthwhile, verdict } = found;
  const { ahead, behind } = directionWords(worthwhile.lessWanted);
  const where = verdict === "leaning-up" ? ahead : behind;
  const name = sentenceStart(namesOf(usual.name, tried.name).tried);
  return `${name} is ${where} so far, but ${groupSize(found)} is only a hint.`;
}

/** "Gain worth having" and "loss that matters"; where less is wanted a drop is worth having and a rise matters. */
function mayBe({ worthwhile }: TwoTreatments, towards: "up" | "down"): string {
  const { rise, fall } = directionWords(worthwhile.lessWanted);
  const wanted = worthwhile.lessWanted ? "down" : "up";
  return `${towards === "up" ? rise : fall} ${towards === wanted ? "worth having" : "that matters"}`;
}
