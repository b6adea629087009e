import { isKnown, type Limits } from "../nouns/known";
import { amountText } from "./amount";
import { changeRangeText, namesAnEnd } from "./changeRange";

/** Which range is told: of the percent change, or of the difference in amounts where there is no percent. */
export interface ToldRange {
  readonly changeRange: Limits;
  readonly differenceRange: Limits | null;
  readonly unit: string | null;
  readonly confidence: number;
}

/**
 * The range in words (METHODS 6.2): what the true change may be, then how often such a range misses it. Empty when
 * there is no range.
 */
export function rangeSentences({ changeRange, differenceRange, unit, confidence }: ToldRange): readonly string[] {
  const change = changeRangeText(changeRange);
  if (change !== null && !namesAnEnd(changeRange))
    return [`The true change may be ${change}: this trial sets no limit.`];
  if (change !== null) return [`The true change may be ${change}.`, missSentence(confidence)];
  const difference = differenceRange === null ? null : differenceText(differenceRange, unit);
  return difference === null ? [] : [`The true difference may be ${difference}.`, missSentence(confidence)];
}

function differenceText({ low, high }: Limits, unit: string | null): string | null {
  if (!isKnown(low) || !isKnown(high)) return null;
  return `anything from ${signedAmount(low)} to ${signedAmount(high)}${unit === null ? "" : ` ${unit}`}`;
}

function signedAmount(amount: number): string {
  return amount > 0 ? `+${amountText(amount)}` : amountText(amount);
}

/** "About 1 such range in 20 misses it.", for any confidence from 0.5 up to 1. */
export function missSentence(confidence: number): string {
  const oneIn = 1 / (1 - confidence);
  const whole = Math.round(oneIn);
  if (oneIn > 10 || Math.abs(oneIn - whole) < 0.01) return `About 1 such range in ${whole} misses it.`;
  return `About ${Math.round(100 * (1 - confidence))} such ranges in 100 miss it.`;
}
