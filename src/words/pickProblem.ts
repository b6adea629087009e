import type { Problem } from "../nouns/problem";
import { counted } from "./counted";
import { listText } from "./list";
import { placeNamed } from "./place";
import { shortLabel } from "./shortLabel";

const KINDS = [
  "no-picks",
  "no-dates",
  "most-have-two-names",
  "unpicked-without-treatment",
  "too-many-columns",
  "two-seasons",
  "plants-each-lacks",
  "number-without-name",
  "not-a-date",
] as const;

/** Problems with a log of picks and what belongs to it. */
export type PickProblem = Extract<Problem, { problem: (typeof KINDS)[number] }>;

export function isPickProblem(problem: Problem): problem is PickProblem {
  return KINDS.some((kind) => kind === problem.problem);
}

/** So many plants are named in one sentence. */
const MOST_NAMED = 3;

/** What is wrong with a log of picks, and how to mend it. */
export function pickProblemSentence(problem: PickProblem): string {
  switch (problem.problem) {
    case "no-picks":
      return `No picks in ${problem.where}. Give one row per pick, each with its label.`;
    case "no-dates":
      return `No date in ${problem.where} could be read for certain. Write dates like 2023-07-05.`;
    case "most-have-two-names":
      return twoNames(problem);
    case "unpicked-without-treatment":
      return unpicked(problem.plants);
    case "too-many-columns":
      return `${problem.argument} has ${counted(problem.columns, "column")}. Give ${columnsWanted(problem.most)}.`;
    case "two-seasons":
      return `The dates are ${counted(problem.days, "day")} apart. Are these two seasons? Give one at a time.`;
    case "number-without-name":
      return `${placeNamed(problem.place)} holds ${shortLabel(problem.given)}, but no treatment stands beside it. Write its name, or clear the cell.`;
    case "plants-each-lacks":
      return `plants_each does not name “${shortLabel(problem.name)}”. Give each treatment and its number of plants.`;
    case "not-a-date":
      return `${problem.argument} is “${shortLabel(problem.given)}”, which is no certain date. Write it like 2023-07-05.`;
  }
}

function columnsWanted(most: number): string {
  return most === 2 ? "two: treatment and number of plants" : "one to three: plant, treatment, bed";
}

function twoNames({ of, plant, names }: Extract<PickProblem, { problem: "most-have-two-names" }>): string {
  const [one, other] = names.map((name) => `“${shortLabel(name)}”`);
  const found = `Most plants have more than one ${of}: “${shortLabel(plant)}” has ${one} and ${other}.`;
  return `${found} Give each plant a label of its own, such as B1-2.`;
}

function unpicked(plants: readonly string[]): string {
  const named = plants.slice(0, MOST_NAMED).map((plant) => `“${shortLabel(plant)}”`);
  const more = plants.length > MOST_NAMED ? [`${plants.length - MOST_NAMED} more`] : [];
  const what = plants.length === 1 ? "was never picked and has" : "were never picked and have";
  return `${listText([...named, ...more])} ${what} no treatment. Give it in the second column of all_plants.`;
}
