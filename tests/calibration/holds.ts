import { isKnown, type Limits } from "../../src/nouns/known";

/** Whether a range holds the truth; an end without limit holds everything on its side. */
export function holds({ low, high }: Limits, truth: number): boolean {
  return !(isKnown(low) && truth < low) && !(isKnown(high) && truth > high);
}
