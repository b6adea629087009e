import type { Report, TellableFinding, Telling } from "../../nouns/report";
import { explain } from "../explain";
import { defaultQuestion, defaultTitle } from "./headings";
import { laidOut } from "./laidOut";
import { missingFrom } from "./missing";
import { reportResult } from "./reportResult";

/** A report of the results chosen, in their order. Without any, it has a title at most and says nothing. */
export function reportOf(telling: Telling): Report {
  const { findings, notes, title, question, safety } = telling;
  return {
    title: title || defaultTitle(findings, notes),
    question: question || defaultQuestion(findings),
    laidOut: laidOut(telling),
    results: findings.map((finding) => reportResult(finding, notes)),
    couldFool: couldFool(findings),
    safety,
    missing: missingFrom(telling),
  };
}

/** Each result's cautions by turns, none said twice; place and season, which all have, come last and in full. */
function couldFool(findings: readonly TellableFinding[]): readonly string[] {
  const lines = findings.flatMap((finding) => explain(finding).lookOutFor);
  const sentences = lines.filter(({ code }) => code !== "C12").map(({ sentence }) => sentence);
  return findings.length === 0 ? [] : [...new Set(sentences), onePlaceOneSeason];
}

/** METHODS 7, the first line. */
const onePlaceOneSeason =
  "One place, one season. Weather, soil and luck differ next year. Treat this as one piece of evidence.";
