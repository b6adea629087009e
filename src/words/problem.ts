import type { Problem } from "../nouns/problem";
import { argumentProblemSentence } from "./argumentProblem";
import { dataProblemSentence } from "./dataProblem";
import { drawProblemSentence, isDrawProblem } from "./drawProblem";
import { layoutProblemSentence } from "./layoutProblem";
import { notPlainSentence } from "./notPlain";
import { isPickProblem, pickProblemSentence } from "./pickProblem";
import { planProblemSentence } from "./planProblem";
import { sentenceStart } from "./sentenceStart";

/**
 * Why a call was refused, in a few short sentences: what is wrong, where, and what to do (METHODS section 8). Does not
 * compile while a kind of problem has no sentence.
 */
export function problemSentence(problem: Problem): string {
  if (problem.problem === "not-plain") return sentenceStart(notPlainSentence(problem.given, problem.because));
  return sentenceStart(sentence(problem));
}

function sentence(problem: Exclude<Problem, { problem: "not-plain" }>): string {
  if (isPickProblem(problem)) return pickProblemSentence(problem);
  if (isDrawProblem(problem)) return drawProblemSentence(problem);
  switch (problem.problem) {
    case "missing-argument":
    case "unknown-show":
    case "show-elsewhere":
    case "unknown-choice":
    case "one-cell-wanted":
    case "not-a-number":
    case "not-whole":
    case "percent-as-points":
    case "percent-outside":
    case "unknown-treatment":
    case "price-not-above-zero":
      return argumentProblemSentence(problem);
    case "negative-amount":
    case "total-at-end":
    case "average-at-end":
    case "shapes-differ":
    case "ranges-swapped":
    case "units-differ":
    case "no-usable-plants":
    case "no-usable-trials":
    case "usual-zero":
    case "numbers-for-planted":
    case "planted-unclear":
    case "all-lost":
      return dataProblemSentence(problem);
    case "too-few-treatments":
    case "too-many-treatments":
    case "usual-not-named":
    case "treatment-is-bed":
    case "bed-is-unit":
    case "no-shared-bed":
    case "own-unevenness-in-beds":
      return layoutProblemSentence(problem);
    default:
      return planProblemSentence(problem);
  }
}
