import { chanceEnough } from "../methods/chanceEnough";
import { plantsNeeded as fewestPlants } from "../methods/plantsNeeded";
import { power } from "../methods/power";
import { setOut as plantsSetOut } from "../methods/setOut";
import { smallestChange } from "../methods/smallestChange";
import type { PlanBasis, PlantsNeeded } from "../nouns/findings/planning";
import { isKnown } from "../nouns/known";
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
  const asked = { ...basis, finding: "plants-needed", change, chance, losses, worthwhile } as const;
  const needed = fewestPlants(change, chance, basis);
  if (!isKnown(needed)) {
    const cautions = lazy(() => planCautions(basis, null, null));
    const smallestWithHalf = () => needed;
    const figures = { needed, setOut: needed, inAll: needed, chanceToSee: needed, chanceEnough: needed };
    return { ...asked, ...figures, smallestWithHalf, cautions };
  }
  const setOut = plantsSetOut(needed, losses, basis.beds);
  const chanceToSee = power(change, needed, basis);
  const half = Math.max(2, Math.floor(needed / 2));
  return {
    ...asked,
    needed,
    setOut,
    inAll: basis.treatments * setOut,
    chanceToSee,
    chanceEnough: chanceEnough({ change, worthwhile: worthwhile.size }, needed, basis),
    smallestWithHalf: lazy(() => smallestChange(half, { chance, direction: change > 0 ? "more" : "less" }, basis)),
    cautions: lazy(() => planCautions(basis, needed, isKnown(chanceToSee) ? chanceToSee : null)),
  };
}
