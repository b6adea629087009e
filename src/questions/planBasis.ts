import type { Caution } from "../nouns/caution";
import type { PlanBasis } from "../nouns/findings/planning";
import { isProblem, type Problem } from "../nouns/problem";
import { readFraction } from "../ranges/readFraction";
import { readWhole } from "../ranges/readWhole";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { readBeds } from "./readBeds";

/** The general guess for single plants of an unknown crop (METHODS 5.4, from published uniformity trials). */
export const GENERAL_UNEVENNESS = 0.35;
const MOST_TREATMENTS = 20;
/** Fewer plants of each treatment cannot settle anything. */
const ENOUGH = 4;
const EVEN_CHANCE = 0.5;

/** What every plan rests on, as typed or by default. */
export function readPlanBasis(given: Given): PlanBasis | Problem {
  const read = allRead({
    unevenness: readFraction(given.unevenness, "unevenness", null),
    treatments: readWhole(given.treatments, { argument: "treatments", low: 2, high: MOST_TREATMENTS, fallback: 2 }),
    beds: readBeds(given.beds),
  });
  if (isProblem(read)) return read;
  const { unevenness, treatments, beds } = read;
  return { unevenness: unevenness ?? GENERAL_UNEVENNESS, unevennessGiven: unevenness !== null, treatments, beds };
}

/** What to look out for in a plan of so many plants each, with its chance where one was worked out. */
export function planCautions(basis: PlanBasis, plantsEach: number | null, chance: number | null): readonly Caution[] {
  return [
    ...(basis.unevennessGiven ? [] : [{ caution: "C27", unevenness: basis.unevenness } as const]),
    ...(plantsEach !== null && plantsEach < ENOUGH ? [{ caution: "C28" } as const] : []),
    ...(chance !== null && chance < EVEN_CHANCE ? [{ caution: "C29" } as const] : []),
    { caution: "C12" },
  ];
}
