import type { Explanation } from "../nouns/explanation";
import type { UpDown } from "../nouns/findings/upDown";
import { changeRangeText } from "./changeRange";
import { counted } from "./counted";
import { lookOutFor } from "./lookOutFor";
import { noRangeSentence } from "./noRangeSentence";
import { rangeSentences } from "./rangeSentences";
import { sentenceStart } from "./sentenceStart";
import { namesIn, tellUpDown } from "./upDown";

/** UPDOWN's finding in plain words (METHODS 9.1). */
export function explainUpDown(found: UpDown): Explanation {
  const told = tellUpDown(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: luck(found),
    lookOutFor: lookOutFor(found.cautions()),
    next: [
      found.single
        ? "Write down one number per plant, then use COMPARETWO."
        : "For a verdict on these two ranges, use COMPARETWO.",
    ],
    workings: workings(found),
  };
}

function compared(found: UpDown): string {
  const { usual, tried } = namesIn(found);
  if (found.single) return `${sentenceStart(tried)} against ${usual}, which is the base (100 %).`;
  const triedPlants = `${sentenceStart(tried)} (${counted(found.triedPlants, "plant")})`;
  return `${triedPlants} against ${usual} (${counted(found.usualPlants, "plant")}), which is the base (100 %).`;
}

function luck({ changeRange, unit, confidence }: UpDown): readonly string[] {
  const range = rangeSentences({ changeRange, differenceRange: null, unit, confidence });
  return range.length > 0 ? range : [noRangeSentence(changeRange.low)].filter((text) => text !== "");
}

function workings({ changeRange }: UpDown): readonly string[] {
  const change = "The change is what is new, less what is usual, as a share of what is usual.";
  return changeRangeText(changeRange) === null
    ? [change]
    : [change, "The range turns Welch's t test around (Welch 1947; Fieller 1954)."];
}
