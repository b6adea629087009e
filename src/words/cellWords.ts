import type { Finding } from "../nouns/finding";
import { lookOutFor } from "./lookOutFor";
import { rangeSentences } from "./rangeSentences";
import { sentences } from "./sentences";
import { tell } from "./tell";
import { treatmentRanges } from "./treatmentRanges";
import { wordCount } from "./wordCount";

const mostWords = 60;
/** Several treatments have so many more each. */
const moreEach = 15;

/**
 * What *show* "words" puts in a cell: the finding, the range sentence and the first caution, at most 60 words
 * (METHODS 9) and 15 more for each of several treatments, in the pane's own sentences. What would go past that is left
 * to the pane: first how often a range misses, then all but the caution's first sentence, then the range.
 */
export function cellWords(found: Finding): string {
  const finding = tell(found).finding();
  const [range = "", miss = ""] = rangeOf(found);
  const caution = lookOutFor(found.cautions()).find(({ code }) => !saysAlready(found, code))?.sentence ?? "";
  const short = firstSentence(caution);
  const ways = [
    sentences(finding, range, miss, caution),
    sentences(finding, range, caution),
    sentences(finding, range, short),
    sentences(finding, short),
  ];
  const most = mostWords + (found.finding === "many-treatments" ? moreEach * found.treatments.length : 0);
  return ways.find((text) => wordCount(text) <= most) ?? finding;
}

/** UPDOWN's own sentence says already that up 200 % is 3 times as much. */
function saysAlready({ finding }: Finding, code: string): boolean {
  return finding === "up-down" && code === "C16";
}

function rangeOf(found: Finding): readonly string[] {
  if (found.finding === "two-treatments") return rangeSentences(found);
  if (found.finding === "many-treatments") return [treatmentRanges(found).join(" ")];
  return found.finding === "up-down" ? rangeSentences({ ...found, differenceRange: null }) : [];
}

function firstSentence(text: string): string {
  return text.split(/(?<=[.?!]) /)[0] ?? "";
}
