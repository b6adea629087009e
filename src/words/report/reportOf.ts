import type { Report, TellableFinding, Telling } from "../../nouns/report";
import type { TrialNotes } from "../../nouns/trialNotes";
import { explain } from "../explain";
import { inMainMeasure } from "../mainMeasure";
import { withTrial } from "../withTrial";
import { defaultQuestion, defaultTitle } from "./headings";
import { laidOut } from "./laidOut";
import { missingFrom } from "./missingFrom";
import { reportResult } from "./reportResult";

/** A report of the results chosen, in their order. Without any, it has a title at most and says nothing. */
export function reportOf(telling: Telling): Report {
  const { notes, title, question, safety } = telling;
  const findings = telling.findings.map((finding) => inMainMeasure(finding, notes));
  return {
    title: title || defaultTitle(findings, notes),
    question: question || defaultQuestion(findings),
    laidOut: laidOut(telling),
    results: findings.map(reportResult),
    couldFool: couldFool(findings, notes),
    safety,
    missing: missingFrom(telling),
  };
}

/** Each result's cautions by turns, none said twice; place and season, which all have, come last and in full. */
function couldFool(findings: readonly TellableFinding[], notes: TrialNotes): readonly string[] {
  const lines = findings.flatMap((finding) => withTrial(explain(finding), finding, notes).lookOutFor);
  const sentences = lines.filter(({ code }) => code !== "C12").map(({ sentence }) => sentence);
  return findings.length === 0 ? [] : [...new Set(sentences), onePlaceOneSeason];
}

/** METHODS 7, the first line. */
const onePlaceOneSeason =
  "One place, one season. Weather, soil and luck differ next year. Treat this as one piece of evidence.";
