import { shorterLabel, usualWords } from "./shortLabel";

/** What the two treatments are called within a sentence. */
export interface Names {
  readonly usual: string;
  readonly tried: string;
}

/**
 * The two treatments' headings, or "the usual" and "the new" where a heading is missing. Two headings that read the
 * same ("Yield" over both) tell nothing apart, so both are dropped.
 *
 * @param mostWords of each heading; those after it are cut off
 */
export function namesOf(usual: string | null, tried: string | null, mostWords = usualWords): Names {
  const usualLabel = shorterLabel(usual ?? "", mostWords);
  const triedLabel = shorterLabel(tried ?? "", mostWords);
  const same = usualLabel.toLowerCase() === triedLabel.toLowerCase();
  return {
    usual: same || usualLabel === "" ? "the usual" : usualLabel,
    tried: same || triedLabel === "" ? "the new" : triedLabel,
  };
}
