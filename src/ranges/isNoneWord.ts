import { labelKey } from "./labelKey";

/** Longer texts, spaces included, are notes; this spares the folding of each. */
const LONGEST = 40;

const NONE_WORDS = new Set(["none", "nil", "nothing", "-", "\u2010", "\u2011", "\u2012", "–", "—", "\u2015", "\u2212"]);

/** None, nil, nothing or a dash as the whole text: the plant lived and bore nothing (METHODS 4.1). */
export function isNoneWord(text: string): boolean {
  return text.length <= LONGEST && NONE_WORDS.has(labelKey(text, "name"));
}
