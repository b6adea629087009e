import type { ManyTreatments } from "../../nouns/findings/manyTreatments";
import type { TwoTreatments } from "../../nouns/findings/twoTreatments";
import type { TellableFinding } from "../../nouns/report";
import type { Verdict } from "../../nouns/verdict";
import { mirrored } from "../direction";
import { explain } from "../explain";
import { shortLabel } from "../shortLabel";
import { splitSentences } from "./splitSentences";

/** What to do next, for people who run no spreadsheet (METHODS 2.1; where a switch costs money or labour). */
export function nextSentences(finding: TellableFinding): readonly string[] {
  switch (finding.finding) {
    case "two-treatments":
      return two(finding);
    case "many-treatments":
      return many(finding);
    case "up-down":
      return ["Before relying on this, compare the plants themselves, each as one number."];
    default:
      return explain(finding)
        .next.filter((text) => !text.includes("=FAIRBED"))
        .flatMap(splitSentences);
  }
}

function two({ verdict, worthwhile }: TwoTreatments): readonly string[] {
  return [afterVerdict[worthwhile.lessWanted ? mirrored(verdict) : verdict]];
}

const drop = "Drop the idea, or change it.";

const afterVerdict: Readonly<Record<Verdict, string>> = {
  "up-enough": "Use it on part of the crop, and compare side by side once more before switching.",
  "up-unclear": "Try it again with more plants before paying for it.",
  "up-small": "It gained too little to be worth paying for.",
  "leaning-up": "Try it again with more plants.",
  "open-up": "It may be worth trying again with more plants. Until then, change nothing.",
  open: "Change nothing on this evidence.",
  level: "Choose the cheaper or easier one.",
  "open-down": drop,
  "down-enough": drop,
  "down-small": drop,
  "down-unclear": drop,
  "leaning-down": drop,
  few: "It was a demonstration. Plan a trial with more plants.",
  none: "It was a demonstration. Plan a trial that can answer.",
};

/** By the treatment that came out furthest ahead; where pairs are compared, cost and ease decide among the like. */
function many({ treatments, usual, worthwhile }: ManyTreatments): readonly string[] {
  if (usual === null) return ["Among ways that cannot be told apart, choose the cheaper or easier one."];
  const wanted = (verdict: Verdict) => (worthwhile.lessWanted ? mirrored(verdict) : verdict);
  const bestFirst = worthwhile.lessWanted ? treatments.toReversed() : treatments;
  const compared = bestFirst.flatMap(({ name, againstUsual }) =>
    againstUsual === null ? [] : [{ name: shortLabel(name), verdict: wanted(againstUsual.verdict) }],
  );
  const front = hopeful.flatMap((verdict) => compared.filter((one) => one.verdict === verdict))[0];
  if (front !== undefined) return [`Try ${front.name} against ${shortLabel(usual)} once more, with more plants.`];
  if (compared.every(({ verdict }) => verdict === "few" || verdict === "none")) return [afterVerdict.few];
  return [afterVerdict.open];
}

/** The verdicts that are worth another trial, the strongest first. */
const hopeful: readonly Verdict[] = ["up-enough", "up-unclear", "leaning-up", "open-up"];
