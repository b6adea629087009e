import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import { noRangeSentence } from "./noRangeSentence";

/** What is missing where COMPARETWO has no answer. */
export function whyNoAnswer({ nothingIn, differenceRange, change, changeRange }: TwoTreatments): string {
  if (nothingIn !== null) return `There are no usable plants in ${nothingIn}.`;
  const noRange = noRangeSentence(differenceRange.low) || noRangeSentence(changeRange.low);
  if (noRange !== "") return noRange;
  if (isKnown(change)) return "The numbers give no range, so nothing here measures luck.";
  return change.absent === "new-below-zero"
    ? "A percent needs a new average that is not below 0."
    : "A percent needs a usual average above 0.";
}
