import type { Problem } from "../nouns/problem";
import { pickANumber } from "./drawLots";
import { placeNamed } from "./place";
import { plainNumber } from "./plainNumber";
import { shortLabel } from "./shortLabel";

const KINDS = ["no-draw-number", "draw-number", "too-many-spots", "name-twice", "error-for-name"] as const;

/** Problems with a draw of lots. */
export type DrawProblem = Extract<Problem, { problem: (typeof KINDS)[number] }>;

export function isDrawProblem(problem: Problem): problem is DrawProblem {
  return KINDS.some((kind) => kind === problem.problem);
}

/** Why lots cannot be drawn, and what to give instead. */
export function drawProblemSentence(problem: DrawProblem): string {
  switch (problem.problem) {
    case "no-draw-number":
      return pickANumber;
    case "draw-number":
      return wrongNumber(problem.given);
    case "too-many-spots":
      return `The plan has ${plainNumber(problem.spots)} spots. Plan ${plainNumber(problem.most)} or fewer.`;
    case "name-twice":
      return `Two treatments are called “${shortLabel(problem.name)}”. Give each its own name.`;
    case "error-for-name":
      return `${placeNamed(problem.place)} shows ${problem.given} instead of a name. Mend it, or leave it out.`;
  }
}

/** A time of day reaches a cell as a part of a day. */
function wrongNumber(given: number): string {
  if (given > 0 && given < 1) {
    return `draw_number is ${plainNumber(given, 6)}. If it is a time, type it without its colon, such as 1431.`;
  }
  if (Number.isInteger(given)) return "draw_number is too long. Give a whole number of up to 15 digits.";
  return `draw_number is ${plainNumber(given, 6)}. Give a whole number.`;
}
