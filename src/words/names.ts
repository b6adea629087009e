import { shortLabel } from "./shortLabel";

/** What the two treatments are called within a sentence. */
export interface Names {
  readonly usual: string;
  readonly tried: string;
}

/**
 * The two treatments' headings, or "the usual" and "the new" where a heading is missing. Two headings that read the
 * same ("Yield" over both) tell nothing apart, so both are dropped.
 */
export function namesOf(usual: string | null, tried: string | null): Names {
  const usualLabel = shortLabel(usual ?? "");
  const triedLabel = shortLabel(tried ?? "");
  const same = usualLabel.toLowerCase() === triedLabel.toLowerCase();
  return {
    usual: same || usualLabel === "" ? "the usual" : usualLabel,
    tried: same || triedLabel === "" ? "the new" : triedLabel,
  };
}
