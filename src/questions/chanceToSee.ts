import { chanceEnough } from "../methods/chanceEnough";
import { power } from "../methods/power";
import type { ChanceToSee } from "../nouns/findings/planning";
import { isKnown } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { missing } from "../ranges/option";
import { readFraction } from "../ranges/readFraction";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { planCautions, readPlanBasis } from "./planBasis";
import { noFreedom, readPlantsEach, spreadOverBeds } from "./readPlantsEach";
import { readWorthwhile } from "./readWorthwhile";

/** How likely is a trial of this size to show a true change of this size? */
export function chanceToSee(given: Given): ChanceToSee | Problem {
  const read = allRead({
    change: readFraction(given.change, "change", missing("change")),
    plantsEach: readPlantsEach(given.plants_each),
    basis: readPlanBasis(given),
    worthwhile: readWorthwhile(given),
  });
  if (isProblem(read)) return read;
  const { change, plantsEach, basis, worthwhile } = read;
  const uneven = spreadOverBeds(plantsEach, basis);
  if (uneven !== null) return uneven;
  const chance = power(change, plantsEach, basis);
  const enough = chanceEnough({ change, worthwhile: worthwhile.size }, plantsEach, basis);
  if (!isKnown(chance) || !isKnown(enough)) return noFreedom(plantsEach, basis);
  return {
    finding: "chance-to-see",
    change,
    plantsEach,
    worthwhile,
    chanceToSee: chance,
    chanceEnough: enough,
    cautions: lazy(() => planCautions(basis, plantsEach, chance)),
    ...basis,
  };
}
