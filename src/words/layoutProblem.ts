import type { Problem } from "../nouns/problem";
import { listText } from "./list";
import { shortLabel } from "./shortLabel";

/** Problems with which treatments there are and how they stand in beds. */
export type LayoutProblem = Extract<
  Problem,
  {
    problem:
      | "too-few-treatments"
      | "too-many-treatments"
      | "usual-not-named"
      | "treatment-is-bed"
      | "bed-is-unit"
      | "no-shared-bed"
      | "own-unevenness-in-beds";
  }
>;

/** Why the treatments cannot be compared as they are laid out, and what to do. */
export function layoutProblemSentence(problem: LayoutProblem): string {
  switch (problem.problem) {
    case "too-few-treatments":
      return tooFew(problem.names);
    case "too-many-treatments":
      return `${problem.count} treatments are too many to compare at once. Give ${problem.most} or fewer.`;
    case "usual-not-named":
      return `To compare against the usual, name it. The names are: ${names(problem.names)}.`;
    case "treatment-is-bed":
      return "Each treatment sits in its own bed, so bed and treatment cannot be told apart. Leave out the beds.";
    case "bed-is-unit":
      return "Each bed holds one treatment, so a bed counts once. Average each bed, and compare the averages without beds.";
    case "no-shared-bed":
      return apartFromTheRest(problem.apart);
    case "own-unevenness-in-beds":
      return "“own unevenness” cannot be used with beds. Leave out the beds, or choose another way to compare.";
  }
}

function apartFromTheRest(apart: readonly string[]): string {
  const [share, them] = apart.length === 1 ? ["shares", "it"] : ["share", "them"];
  return `${listText(apart.map(shortLabel))} ${share} no bed with the others. Compare ${them} apart, or leave out the beds.`;
}

function tooFew(given: readonly string[]): string {
  if (given.length === 0) return "No treatments are named. Give one label per plant, as tall as the amounts.";
  return `Only ${names(given)} is named. Two or more treatments are needed.`;
}

function names(given: readonly string[]): string {
  return given.map((name) => `“${shortLabel(name)}”`).join(", ");
}
