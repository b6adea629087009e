import type { ManyTreatments } from "../../nouns/findings/manyTreatments";
import type { TwoTreatments } from "../../nouns/findings/twoTreatments";
import type { TellableFinding } from "../../nouns/report";
import { counted } from "../counted";
import { explain } from "../explain";
import { sentenceStart } from "../sentenceStart";
import { shortLabel } from "../shortLabel";
import { withNames } from "../withNames";
import { splitSentences } from "./splitSentences";

/** How plants were set against each other, told to people who did not see the beds. */
export function comparedSentences(finding: TellableFinding): readonly string[] {
  switch (finding.finding) {
    case "two-treatments":
      return two(finding);
    case "many-treatments":
      return many(finding);
    default:
      return splitSentences(explain(finding).compared);
  }
}

function two(finding: TwoTreatments): readonly string[] {
  const { usual, tried, pairs, asked } = finding;
  // The first sentence is told anew; what follows says what was counted and what was left out.
  const [, ...rest] = splitSentences(explain(finding).compared);
  const place = asked === "beds" ? "bed" : "pair";
  const stood =
    pairs === null
      ? withNames(usual.name, tried.name, (names) => {
          const plants = `${counted(tried.plants.length, "plant")} of ${names.tried}`;
          return `We set ${plants} against ${usual.plants.length} of ${names.usual}.`;
        })
      : withNames(
          usual.name,
          tried.name,
          (names) =>
            `${sentenceStart(names.tried)} and ${names.usual} stood side by side in ${counted(pairs.complete, place)}.`,
        );
  return [stood, ...rest];
}

function many({ treatments, usual, beds }: ManyTreatments): readonly string[] {
  const plants = treatments.reduce((sum, one) => sum + one.plants.length, 0);
  const stood = `${counted(plants, "plant")} were compared${beds === null ? "" : `, in ${counted(beds.length, "bed")}`}.`;
  const others = treatments.filter(({ isUsual }) => !isUsual).length;
  if (usual === null) return [`We set ${counted(treatments.length, "treatment")} against each other.`, stood];
  return [`We set ${counted(others, "treatment")} against ${shortLabel(usual)}.`, stood];
}
