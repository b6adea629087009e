import type { RandomSource } from "../numerics/random";

/**
 * Draws `size` of the values by lot and sums them. The pool is left in another order, which the next draw may start from.
 *
 * Source: R. Durstenfeld (1964), Communications of the ACM 7, 420, stopped after `size` places.
 */
export function drawSum(pool: number[], size: number, source: RandomSource): number {
  let sum = 0;
  for (let place = 0; place < size; place += 1) {
    const from = place + source.below(pool.length - place);
    const drawn = pool[from] as number;
    pool[from] = pool[place] as number;
    pool[place] = drawn;
    sum += drawn;
  }
  return sum;
}

/** Gives every value a sign by lot and sums them. */
export function flipSum(values: readonly number[], source: RandomSource): number {
  let sum = 0;
  for (const value of values) sum += source.below(2) === 0 ? value : -value;
  return sum;
}
