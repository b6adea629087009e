import type { Problem } from "../nouns/problem";
import { counted } from "./counted";
import { plainNumber } from "./plainNumber";

/** Problems with a plan's numbers, each readable but not possible as a plan. */
export type PlanProblem = Extract<
  Problem,
  {
    problem:
      | "zero-worthwhile"
      | "zero-unevenness"
      | "no-change"
      | "fall-too-big"
      | "too-few-each"
      | "not-a-multiple"
      | "no-freedom";
  }
>;

/** What is wrong with a plan, and what to give instead. */
export function planProblemSentence(problem: PlanProblem): string {
  switch (problem.problem) {
    case "zero-worthwhile":
      return "Any change at all would matter. Give the smallest change you would act on as worthwhile, such as 5%.";
    case "zero-unevenness":
      return `unevenness is ${points(problem.given)}, but plants always differ. Give a percent above 0, such as 35%.`;
    case "no-change":
      return "No change needs no trial. Give the change you hope for, such as 20%.";
    case "fall-too-big":
      return `change is ${points(problem.given)}, which leaves nothing to measure. Give a smaller fall, such as -30%.`;
    case "too-few-each":
      return `plants_each is ${plainNumber(problem.given, 6)}. A trial needs 2 or more plants of each treatment.`;
    case "not-a-multiple":
      return notAMultiple(problem.plants, problem.beds);
    case "no-freedom":
      return noFreedom(problem.plants, problem.treatments, problem.beds);
  }
}

function points(fraction: number): string {
  return `${plainNumber(fraction * 100, 4)} %`;
}

function notAMultiple(plants: number, beds: number): string {
  const cannot = `${counted(plants, "plant")} of each cannot be shared evenly among ${counted(beds, "bed")}.`;
  return `${cannot} Each bed must hold as many of each: make plants_each a multiple of ${beds}.`;
}

function noFreedom(plants: number, treatments: number, beds: number): string {
  const each = `${counted(plants, "plant")} of each of ${counted(treatments, "treatment")}`;
  return `${each} in ${counted(beds, "bed")} leave nothing to measure luck with. Plan more plants, or fewer beds.`;
}
