import type { Known } from "../nouns/known";
import { type Plan, power } from "./power";

/** More plants of each treatment than this are not practical. */
const MOST = 500;

/**
 * The fewest plants of each treatment that show a true change with the wanted chance.
 *
 * @param change a fraction above −1, not 0
 * @param chance wanted, in (0.05, 1)
 * @returns whole, 2 or more, losses not yet allowed for; an Absence beyond 500
 *
 * The chance rises with the number of plants, so halving finds the smallest.
 */
export function plantsNeeded(change: number, chance: number, plan: Plan): Known {
  const isEnough = (plantsEach: number) => {
    const reached = power(change, plantsEach, plan);
    return typeof reached === "number" && reached >= chance;
  };
  if (!isEnough(MOST)) return { absent: "not-practical" };
  let [few, enough] = [1, MOST];
  while (enough - few > 1) {
    const middle = Math.floor((few + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else few = middle;
  }
  return enough;
}
