import type { LabelSwap, TwoTreatments } from "../nouns/findings/twoTreatments";
import { timesInHundred } from "./chance";
import { noRangeSentence } from "./noRangeSentence";
import { rangeSentences } from "./rangeSentences";

/** "Could it be luck?": swapped labels, then the range and how often such a range misses (METHODS 6.2). */
export function twoTreatmentsLuck(found: TwoTreatments): readonly string[] {
  const swap = found.labelSwap();
  const range = rangeSentences(found);
  // With no answer, the finding itself says why there is no range.
  const noRange = range.length > 0 || found.verdict === "none" ? "" : noRangeSentence(found.differenceRange.low);
  return [swap === null ? "" : swapSentences(swap, found), ...range, noRange].filter((text) => text !== "");
}

function swapSentences({ p }: LabelSwap, { pairs, asked }: TwoTreatments): string {
  const within = `Swap the two labels of each ${asked === "beds" ? "bed" : "pair"} at random`;
  const swap = pairs === null ? "Swap the plant labels at random" : within;
  return `Suppose the treatment changed nothing. ${swap} 100 times, and a gap this big turns up ${timesInHundred(p)}.`;
}
