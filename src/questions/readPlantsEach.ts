import type { PlanBasis } from "../nouns/findings/planning";
import type { Problem } from "../nouns/problem";
import { type Argument, missing } from "../ranges/option";
import { readWhole } from "../ranges/readWhole";

const LEAST = 2;

/** The plants of each treatment in a plan: whole, two or more. */
export function readPlantsEach(given: Argument): number | Problem {
  const argument = "plants_each";
  const plants = readWhole(given, { argument, low: LEAST, high: null, fallback: missing(argument) });
  if (typeof plants === "number" || plants.problem !== "not-whole") return plants;
  const tooFew = Number.isInteger(plants.given) && plants.given < LEAST;
  return tooFew ? { problem: "too-few-each", given: plants.given } : plants;
}

/** Null when every bed can hold as many of each treatment. */
export function spreadOverBeds(plantsEach: number, { beds }: PlanBasis): Problem | null {
  const even = typeof beds !== "number" || plantsEach % beds === 0;
  return even ? null : { problem: "not-a-multiple", plants: plantsEach, beds };
}

/** The refusal where beds and treatments leave nothing to tell luck by. */
export function noFreedom(plants: number, { treatments, beds }: PlanBasis): Problem {
  return { problem: "no-freedom", plants, treatments, beds: typeof beds === "number" ? beds : plants };
}
