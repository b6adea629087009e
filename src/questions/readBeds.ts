import type { PlanBasis } from "../nouns/findings/planning";
import type { Problem } from "../nouns/problem";
import type { Argument } from "../ranges/option";
import { readChoice } from "../ranges/readChoice";
import { readWhole } from "../ranges/readWhole";

/** The beds of a plan: how many, or "one each" for one of every treatment in each; null for separate plants. */
export function readBeds(given: Argument): PlanBasis["beds"] | Problem {
  if (given === null || given === undefined) return null;
  const [[cell = null] = []] = given.cells;
  if (typeof cell === "string" && /[a-z]/i.test(cell)) {
    return readChoice(given, { argument: "beds", allowed: ["one each"] as const, fallback: null });
  }
  return readWhole(given, { argument: "beds", low: 1, high: null, fallback: null });
}
