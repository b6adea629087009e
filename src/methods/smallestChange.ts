import type { Known } from "../nouns/known";
import { bisect } from "../numerics/root";
import { noncentrality, type Plan, plannedTest, powerOf } from "./power";

/** The largest changes looked at: five times as much, and all but 1 % gone. */
const FARTHEST = { more: 4.99, less: -0.99 } as const;

/** The change looked for. */
export interface Wanted {
  /** The chance to see it, in (0.05, 1). */
  readonly chance: number;
  readonly direction: "more" | "less";
}

/**
 * The smallest true change that a trial shows with the wanted chance, as a fraction, below 0 for "less".
 *
 * @param plantsEach whole, 2 or more: plants of each treatment that live to the end
 * @returns an Absence when no change up to +499 % (down to −99 %) reaches the chance, or no degree of freedom is left
 *
 * The chance rises with the size of the change in either direction, so halving finds the place.
 */
export function smallestChange(plantsEach: number, { chance, direction }: Wanted, plan: Plan): Known {
  const test = plannedTest(plantsEach, plan);
  if (test === null) return { absent: "no-degrees-of-freedom" };
  const sign = direction === "more" ? 1 : -1;
  const excess = (size: number) => powerOf(test, noncentrality(sign * size, plantsEach, plan.unevenness)) - chance;
  const farthest = Math.abs(FARTHEST[direction]);
  if (excess(farthest) < 0) return { absent: "too-few-plants" };
  return sign * bisect(excess, 0, farthest, 1e-14);
}
