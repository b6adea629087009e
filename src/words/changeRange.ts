import { isKnown, type Known, type Limits } from "../nouns/known";
import { percentText, signedPercent } from "./percent";

/** A percent range within a sentence, "anything from −1 % to +95 %"; null when there is no range. */
export function changeRangeText(range: Limits): string | null {
  return spanText(range, signedPercent);
}

/**
 * The part of a range on one side of 0 as a size without signs, for "the true gain may be …": "anything from 10 % to
 * 74 %". Null when there is no range.
 */
export function sizeRangeText({ low, high }: Limits): string | null {
  if (isKnown(low) && low >= 0) return spanText({ low, high }, percentText);
  const smallest = isKnown(high) ? -high : high;
  // A loss ends at 100 %, so "no lower limit above −100 %" is a loss of up to 100 %.
  const biggest = isKnown(low) ? -low : 1;
  return spanText({ low: smallest, high: biggest }, percentText);
}

function spanText({ low, high }: Limits, percent: (fraction: number) => string): string | null {
  if (!isKnown(low) && low.absent !== "no-lower-limit") return null;
  if (!isKnown(high) && high.absent !== "no-upper-limit") return null;
  const from = isKnown(low) ? percent(low) : "−100 %";
  if (isKnown(high)) return from === percent(high) ? `about ${from}` : `anything from ${from} to ${percent(high)}`;
  return isKnown(low) ? `anything from ${from} up, with no upper limit` : "anything at all";
}

/** True when a range names at least one end, so that it can miss the truth. */
export function namesAnEnd({ low, high }: { readonly low: Known; readonly high: Known }): boolean {
  return isKnown(low) || isKnown(high);
}
