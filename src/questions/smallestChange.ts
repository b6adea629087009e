import { smallestChange as smallest } from "../methods/smallestChange";
import type { SmallestChange } from "../nouns/findings/planning";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { readChoice } from "../ranges/readChoice";
import { readFraction } from "../ranges/readFraction";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { planCautions, readPlanBasis } from "./planBasis";
import { readPlantsEach, spreadOverBeds } from "./readPlantsEach";

const CHANCE = 0.8;

/** What is the smallest true change that a trial of this size is likely to show? */
export function smallestChange(given: Given): SmallestChange | Problem {
  const allowed = ["more", "less"] as const;
  const read = allRead({
    plantsEach: readPlantsEach(given.plants_each),
    basis: readPlanBasis(given),
    chance: readFraction(given.chance, "chance", CHANCE),
    direction: readChoice(given.direction, { argument: "direction", allowed, fallback: "more" as const }),
  });
  if (isProblem(read)) return read;
  const { plantsEach, basis, chance, direction } = read;
  const uneven = spreadOverBeds(plantsEach, basis);
  if (uneven !== null) return uneven;
  return {
    finding: "smallest-change",
    plantsEach,
    chance,
    direction,
    change: smallest(plantsEach, { chance, direction }, basis),
    cautions: lazy(() => planCautions(basis, plantsEach, null)),
    ...basis,
  };
}
