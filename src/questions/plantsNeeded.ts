import { chanceEnough } from "../methods/chanceEnough";
import { plantsNeeded as fewestPlants } from "../methods/plantsNeeded";
import { power } from "../methods/power";
import { setOut as plantsSetOut } from "../methods/setOut";
import { smallestChange } from "../methods/smallestChange";
import type { PlanBasis, PlantsNeeded } from "../nouns/findings/planning";
import { isKnown, type Known } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import type { Worthwhile } from "../nouns/verdict";
import { missing } from "../ranges/option";
import { readFraction } from "../ranges/readFraction";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { planCautions, readPlanBasis } from "./planBasis";
import { readWorthwhile } from "./readWorthwhile";

const CHANCE = 0.8;
const LOSSES = 0.1;

/** What the grower hopes for and allows for. */
interface Wish {
  readonly change: number;
  readonly chance: number;
  readonly losses: number;
  readonly worthwhile: Worthwhile;
  readonly basis: PlanBasis;
}

/** How many plants of each treatment must be set out? */
export function plantsNeeded(given: Given): PlantsNeeded | Problem {
  const read = allRead({
    change: readFraction(given.change, "change", missing("change")),
    basis: readPlanBasis(given),
    chance: readFraction(given.chance, "chance", CHANCE),
    losses: readFraction(given.losses, "losses", LOSSES),
    worthwhile: readWorthwhile(given),
  });
  if (isProblem(read)) return read;
  return read.change === 0 ? { problem: "no-change" } : planned(read);
}

function planned({ change, chance, losses, worthwhile, basis }: Wish): PlantsNeeded {
  const needed = fewestPlants(change, chance, basis);
  const setOut = isKnown(needed) ? plantsSetOut(needed, losses, basis.beds) : needed;
  const withNeeded = (work: (plantsEach: number) => Known) => lazy(() => (isKnown(needed) ? work(needed) : needed));
  const chanceToSee = withNeeded((plantsEach) => power(change, plantsEach, basis));
  return {
    finding: "plants-needed",
    change,
    chance,
    losses,
    worthwhile,
    needed,
    setOut,
    inAll: isKnown(setOut) ? basis.treatments * setOut : setOut,
    chanceToSee,
    chanceEnough: withNeeded((plantsEach) => chanceEnough({ change, worthwhile: worthwhile.size }, plantsEach, basis)),
    smallestWithHalf: withNeeded((plantsEach) => {
      const half = Math.max(2, Math.floor(plantsEach / 2));
      return smallestChange(half, { chance, direction: change > 0 ? "more" : "less" }, basis);
    }),
    cautions: lazy(() => planCautions(basis, numberOrNull(needed), numberOrNull(chanceToSee()))),
    ...basis,
  };
}

function numberOrNull(known: Known): number | null {
  return isKnown(known) ? known : null;
}
