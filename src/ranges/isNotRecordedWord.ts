import { labelKey } from "./labelKey";

/** Longer texts, spaces included, are notes; this spares the folding of each. */
const LONGEST = 40;

const NOT_RECORDED_WORDS = new Set([
  "n/a",
  "na",
  "n.a.",
  "?",
  "??",
  "???",
  "forgot",
  "forgotten",
  "missing",
  "unknown",
  "not counted",
  "not measured",
  "not recorded",
  "not weighed",
  "no harvest",
]);

/**
 * A usual way to say that there is no number for a plant, as the whole text (METHODS 4.1; "no harvest" is what
 * HALFPICKED puts out). Such a text is never a heading.
 */
export function isNotRecordedWord(text: string): boolean {
  return text.length <= LONGEST && NOT_RECORDED_WORDS.has(labelKey(text, "name"));
}
