import { isProblem, type Problem } from "../nouns/problem";
import type { Worthwhile } from "../nouns/verdict";
import { readFraction } from "../ranges/readFraction";
import type { Given } from "./given";

/** Taken when the grower names no worthwhile change, as a fraction. */
export const USUAL_SIZE = 0.1;

/** The smallest change the grower would act on; below zero means that less is wanted. */
export function readWorthwhile(given: Given): Worthwhile | Problem {
  const typed = readFraction(given.worthwhile, "worthwhile", null);
  if (typed === null) return { size: USUAL_SIZE, lessWanted: false, given: false };
  if (typeof typed === "object" && isProblem(typed)) return typed;
  return { size: Math.abs(typed), lessWanted: typed < 0, given: true };
}
