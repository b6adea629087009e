import type { Known } from "../nouns/known";
import { nearQuantile } from "../numerics/normal";
import { ALPHA } from "./alpha";
import { noncentrality, type Plan, power } from "./power";

/** More plants of each treatment than this are not practical. */
const MOST = 500;

/**
 * The fewest plants of each treatment that show a true change with the wanted chance.
 *
 * @param change a fraction above −1, not 0
 * @param chance wanted, in (0.05, 1)
 * @returns whole, 2 or more, losses not yet allowed for; an Absence beyond 500
 *
 * The chance rises with the number of plants; the search begins where the normal distribution puts the answer, and
 * steps away from there in strides that double until the answer lies between two steps; then it halves.
 */
export function plantsNeeded(change: number, chance: number, plan: Plan): Known {
  const isEnough = (plantsEach: number) => {
    const reached = power(change, plantsEach, plan);
    return typeof reached === "number" && reached >= chance;
  };
  let [few, enough] = [1, MOST + 1];
  let next = guess(change, chance, plan);
  for (let stride = 1; enough - few > 1; stride *= 2) {
    const found = isEnough(next);
    if (found) enough = next;
    else few = next;
    const isBetween = few > 1 && enough <= MOST;
    if (isBetween) next = Math.floor((few + enough) / 2);
    else next = found ? Math.max(next - stride, few + 1) : Math.min(next + stride, MOST);
  }
  return enough > MOST ? { absent: "not-practical" } : enough;
}

/** For known spread: the change in standard errors is as far above the critical value as the chance asks. */
function guess(change: number, chance: number, plan: Plan): number {
  const wanted = nearQuantile(1 - ALPHA / (plan.treatments - 1) / 2) + nearQuantile(chance);
  const plantsEach = Math.ceil((wanted / noncentrality(change, 1, plan.unevenness)) ** 2);
  return Math.max(2, Math.min(MOST, plantsEach));
}
