import { syllable } from "syllable";

/** A text cut into sentences; a full stop within a formula or number ends none. */
export function sentencesOf(text: string): readonly string[] {
  return text.split(/(?<=[.?!])\s+/).filter((sentence) => sentence !== "");
}

/** The words a reader reads: runs that hold a letter or a digit; a ready formula is one word. */
export function wordsOf(text: string): readonly string[] {
  return text
    .replace(/=FAIRBED\.\S+?\)(?=[.\s]|$)/g, "formula")
    .split(/\s+/)
    .filter((run) => /[\p{L}\p{N}]/u.test(run));
}

/** Flesch and Kincaid's reading grade (Kincaid and others 1975); a figure counts as one syllable. */
export function readingGrade(text: string): number {
  const words = wordsOf(text);
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return 0.39 * (words.length / sentencesOf(text).length) + 11.8 * (syllables / words.length) - 15.59;
}

/** What no text may claim about treatments (METHODS 6.3). */
export const neverSay: readonly RegExp[] = [
  /\bprove[sn]?\b/i,
  /\bproof\b/i,
  /\bconfirm/i,
  /\bguarantee/i,
  /\bsignifican/i,
  /\bsure\b/i,
  /probability that/i,
  /chance (it|that it) is luck/i,
  /no effect/i,
  /no difference/i,
  /the same\b/i,
  /\bworks\b/i,
  /\bbest\b/i,
  /\btrend/i,
  /\bnull\b/i,
  /\bNaN\b/,
  /\bInfinity\b/,
  /[\u0370-\u03ff]/,
  /\[object/,
];
