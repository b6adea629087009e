import type { ReportResult, TellableFinding } from "../../nouns/report";
import { explain } from "../explain";
import { rangeSentences } from "../rangeSentences";
import { splitSentences } from "./splitSentences";

/** Could it be luck? What the finding itself tells of it, the ranges, is not told again. */
export function howSure(finding: TellableFinding): Pick<ReportResult, "howSure" | "howSureBriefly"> {
  const { luck } = explain(finding);
  const swapped = finding.finding === "two-treatments" && finding.labelSwap() !== null;
  const told = toldAlready(finding);
  const all = luck.filter((text) => !told(text));
  const briefly = swapped ? all.slice(1) : all;
  return { howSure: all.flatMap(splitSentences), howSureBriefly: briefly.flatMap(splitSentences) };
}

function toldAlready(finding: TellableFinding): (text: string) => boolean {
  switch (finding.finding) {
    case "two-treatments": {
      const ranges = rangeSentences(finding);
      return (text) => ranges.includes(text);
    }
    case "many-treatments":
      return (text) => finding.usual !== null && text.includes(": the true change may be ");
    default:
      return () => false;
  }
}
