import { dayOf } from "../../nouns/day";
import type { TellableFinding, Telling } from "../../nouns/report";
import { type TrialNotes, type TrialQuestion, trialQuestions } from "../../nouns/trialNotes";
import { percentText } from "../percent";
import { shortLabel } from "../shortLabel";
import { spokenDay } from "../spokenDay";

/**
 * How the trial was laid out and run: crop, place and season, the lots, what was measured, then what the checklist was
 * answered. What is not known is left out; `missingFrom` names what a complete report needs.
 */
export function laidOut({ findings, notes, drawNumber }: Telling): readonly string[] {
  const answered = trialQuestions
    .filter((question) => question !== "drawn-by-lot")
    .map((question) => answerSentence(question, notes));
  const sentences = [
    where(notes),
    lots(notes, drawNumber),
    measured(notes, findings),
    worthwhile(notes),
    stop(notes),
    ...answered,
  ];
  return sentences.filter((sentence) => sentence !== "");
}

/** "We grew courgettes at Marlpit Corner in 2023." */
function where({ crop, place, season }: TrialNotes): string {
  const [grown, at, when] = [crop, place, season].map(shortLabel);
  if (grown === "" && at === "" && when === "") return "";
  const what = grown === "" ? "The trial ran" : `We grew ${grown}`;
  return `${what}${at === "" ? "" : ` at ${at}`}${when === "" ? "" : ` in ${when}`}.`;
}

function lots({ answers }: TrialNotes, drawNumber: number | null): string {
  const number = drawNumber === null ? "" : ` (draw number ${drawNumber})`;
  if (answers["drawn-by-lot"] === "no") return "We drew no lots: we chose which plant got what.";
  if (answers["drawn-by-lot"] === "yes" || drawNumber !== null)
    return `We drew lots for which plant got what${number}.`;
  return "";
}

/** "We measured harvest per plant, in grams." */
function measured({ measure, unit }: TrialNotes, findings: readonly TellableFinding[]): string {
  const inUnit = shortLabel(unit || findings.map((finding) => unitOf(finding)).find((one) => one !== "") || "");
  if (measure === "") return inUnit === "" ? "" : `We measured in ${inUnit}.`;
  return `We measured ${shortLabel(measure)}${inUnit === "" ? "" : `, in ${inUnit}`}.`;
}

/** The unit of a result's amounts, as its ranges have it; "" where they have none. */
export function unitOf(finding: TellableFinding): string {
  return ("unit" in finding ? finding.unit : null) ?? "";
}

function worthwhile({ worthwhile: smallest, answers }: TrialNotes): string {
  if (smallest === null) return "";
  const size = percentText(Math.abs(smallest));
  const change = smallest < 0 ? `${size} less` : `${size} more`;
  return answers["measure-first"] === "yes"
    ? `Before harvest we said that ${change} would matter.`
    : `To us, ${change} would matter.`;
}

function stop({ stopDate }: TrialNotes): string {
  return stopDate === null ? "" : `The harvest stopped for all on ${spokenDay(dayOf(stopDate))}.`;
}

type Asked = Exclude<TrialQuestion, "drawn-by-lot">;

/** What an answer of the checklist (METHODS 9.3) says to an audience; "" for "don't know" and no answer. */
function answerSentence(question: Asked, { answers }: TrialNotes): string {
  const answer = answers[question];
  return answer === "yes" || answer === "no" ? answered[question][answer] : "";
}

const answered: Readonly<Record<Asked, Readonly<Record<"yes" | "no", string>>>> = {
  "one-difference": { yes: "Only one thing differed between them.", no: "More than one thing differed between them." },
  "one-batch": { yes: "All seedlings came from one batch.", no: "The seedlings came from different batches." },
  "two-full-beds": {
    yes: "There were at least two beds with every treatment in each.",
    no: "There were not two beds with every treatment in each.",
  },
  "one-picking-rule": {
    yes: "All plants were picked on one day, by one rule.",
    no: "Plants were not all picked on one day, by one rule.",
  },
  "one-stop-date": {
    yes: "The harvest ended on one day for all, and the small fruit was weighed.",
    no: "The harvest did not end on one day for all with the small fruit weighed.",
  },
  "losses-written": {
    yes: "Lost plants and their causes were written down.",
    no: "Lost plants and their causes were not all written down.",
  },
  "measure-first": {
    yes: "The main measure was chosen before harvest.",
    no: "The main measure was chosen after harvest began.",
  },
  "one-plant-a-number": {
    yes: "Each number is one plant, treated on its own.",
    no: "Not every number is one plant, treated on its own.",
  },
  "hit-one-treatment": {
    yes: "Something hit one treatment only, such as shade or slugs.",
    no: "Nothing was seen to hit one treatment only.",
  },
  "equal-space": { yes: "Every plant had as much space.", no: "Some plants had more space than others." },
};
