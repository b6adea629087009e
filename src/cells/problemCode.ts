import type { Problem } from "../nouns/problem";

/** The two error values that can carry a sentence in Excel. */
export type ErrorCode = "#VALUE!" | "#N/A";

/**
 * The error value for a refusal: #VALUE! where the call is wrong, #N/A where a number is due and the data hold none.
 *
 * Source: METHODS section 8 of the project's contract; Excel shows a sentence beside these two codes only.
 */
export function problemCode({ problem }: Problem): ErrorCode {
  return CODES[problem];
}

const CODES: Readonly<Record<Problem["problem"], ErrorCode>> = {
  "missing-argument": "#VALUE!",
  "unknown-show": "#VALUE!",
  "show-elsewhere": "#VALUE!",
  "unknown-choice": "#VALUE!",
  "one-cell-wanted": "#VALUE!",
  "not-a-number": "#VALUE!",
  "not-whole": "#VALUE!",
  "percent-as-points": "#VALUE!",
  "percent-outside": "#VALUE!",
  "zero-worthwhile": "#VALUE!",
  "price-not-above-zero": "#VALUE!",
  "zero-unevenness": "#VALUE!",
  "negative-amount": "#VALUE!",
  "total-at-end": "#VALUE!",
  "average-at-end": "#VALUE!",
  "shapes-differ": "#VALUE!",
  "ranges-swapped": "#VALUE!",
  "units-differ": "#VALUE!",
  "no-usable-plants": "#N/A",
  "no-usable-trials": "#N/A",
  "usual-zero": "#N/A",
  "numbers-for-planted": "#VALUE!",
  "planted-unclear": "#VALUE!",
  "all-lost": "#N/A",
  "not-plain": "#VALUE!",
  "no-change": "#VALUE!",
  "fall-too-big": "#VALUE!",
  "too-few-each": "#VALUE!",
  "not-a-multiple": "#VALUE!",
  "no-freedom": "#VALUE!",
  "no-picks": "#N/A",
  "no-dates": "#N/A",
  "most-have-two-names": "#VALUE!",
  "unpicked-without-treatment": "#VALUE!",
  "too-many-columns": "#VALUE!",
  "two-seasons": "#VALUE!",
  "plants-each-lacks": "#VALUE!",
  "number-without-name": "#VALUE!",
  "not-a-date": "#VALUE!",
  "unknown-treatment": "#VALUE!",
  "no-draw-number": "#VALUE!",
  "draw-number": "#VALUE!",
  "too-many-spots": "#VALUE!",
  "name-twice": "#VALUE!",
  "error-for-name": "#VALUE!",
  "too-few-treatments": "#VALUE!",
  "too-many-treatments": "#VALUE!",
  "usual-not-named": "#VALUE!",
  "treatment-is-bed": "#VALUE!",
  "bed-is-unit": "#VALUE!",
  "no-shared-bed": "#VALUE!",
  "own-unevenness-in-beds": "#VALUE!",
};
