import type { Explanation } from "../../nouns/explanation";
import type { ReportResult, TellableFinding } from "../../nouns/report";
import { explain } from "../explain";
import { treatmentRanges } from "../treatmentRanges";
import { barsOf } from "./barsOf";
import { comparedSentences } from "./comparedSentences";
import { findingSentences } from "./findingSentences";
import { aboutOf } from "./headings";
import { howSure } from "./howSure";
import { unitOf } from "./laidOut";
import { nextSentences } from "./nextSentences";
import { splitSentences } from "./splitSentences";
import { tableOf } from "./tableOf";

/** One result as an audience is told it. */
export function reportResult(finding: TellableFinding): ReportResult {
  const told = explain(finding);
  const unit = unitOf(finding);
  return {
    about: aboutOf(finding),
    compared: comparedSentences(finding),
    table: tableOf(finding, unit),
    unit,
    bars: barsOf(finding),
    finding: findingSentences(finding),
    findingBriefly: findingBriefly(finding, told),
    say: splitSentences(told.say),
    ...howSure(finding),
    next: nextSentences(finding),
  };
}

/** Several treatments in the cell's words, and the ranges of those that were settled. */
function findingBriefly(finding: TellableFinding, { finding: told }: Explanation): readonly string[] {
  if (finding.finding !== "many-treatments") return findingSentences(finding);
  const settled = finding.treatments.filter(({ againstUsual }) => /^(up|down)-/.test(againstUsual?.verdict ?? ""));
  return [...splitSentences(told), ...treatmentRanges({ ...finding, treatments: settled })];
}
