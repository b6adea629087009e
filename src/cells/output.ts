import type { ErrorOutput, Output } from "../nouns/line";

const BEYOND_NUMBERS = "too large to work out";

/** What may leave a function: a number that overflowed is told in words, since Excel would show it as 0 or #NUM!. */
export function safeOutput<Given extends Output | ErrorOutput>(output: Given): Given | string {
  return typeof output === "number" && !Number.isFinite(output) ? BEYOND_NUMBERS : output;
}
