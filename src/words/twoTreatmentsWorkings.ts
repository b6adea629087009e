import type { HowTwo, TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import { changeRangeText } from "./changeRange";
import { methodText } from "./method";
import { percentText } from "./percent";
import { plainNumber } from "./plainNumber";
import { pText } from "./pValue";
import { sentenceStart } from "./sentenceStart";

/** How COMPARETWO was worked out: method, p, what was taken as worthwhile, and the sources. */
export function twoTreatmentsWorkings(found: TwoTreatments): readonly string[] {
  const { pValue, worthwhile, confidence, how, changeRange } = found;
  const method = `${sentenceStart(methodText(found))}.`;
  if (!isKnown(pValue)) return [method];
  const taken = worthwhile.given ? `Worthwhile is ${percentText(worthwhile.size)}` : "Worthwhile is taken as 10 %";
  return [
    method,
    `p (how surprising if nothing differed): ${pText(pValue)}.`,
    `${taken}, and the range is a ${plainNumber(100 * confidence, 4)} % one.`,
    changeRangeText(changeRange) === null ? sources[how] : `${sources[how]} ${percentRange}`,
  ];
}

const percentRange = "Percent range: the t test turned round (Fieller 1954).";

const sources: Readonly<Record<HowTwo, string>> = {
  separate: "Test: Welch 1947.",
  pairs: "Test: Student 1908.",
  "equal unevenness": "Test: Student 1908.",
  ranks: "Test: Wilcoxon 1945; ranges: Welch 1947.",
  "pairs ranks": "Test: Wilcoxon 1945; ranges: Student 1908.",
};
