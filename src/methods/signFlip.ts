import type { LabelSwap } from "../nouns/findings/twoTreatments";
import { randomSource } from "../numerics/random";
import { flipSum } from "./drawSum";
import { flipsBeyond } from "./sumsBeyond";
import { DRAWS, MOST_FLIPS, SEED, swapCount } from "./swapCount";

/**
 * How often swapping the two labels within pairs gives an average difference at least as big as the one seen, either
 * way. All 2ⁿ swaps are looked at up to 20 pairs, else 20 000 drawn by lot from a fixed start.
 *
 * @param differences new − usual, one or more
 *
 * Source: R. A. Fisher (1935), The Design of Experiments, section 21.
 */
export function signFlip(differences: readonly number[]): LabelSwap {
  const sum = differences.reduce((total, difference) => total + difference, 0);
  const largest = differences.reduce((total, difference) => total + Math.abs(difference), 0);
  const count = swapCount({ sum, largest });

  if (differences.length <= MOST_FLIPS) {
    count.add({ hits: flipsBeyond(differences, count.bar), tried: 2 ** differences.length });
    return count.all();
  }
  const source = randomSource(SEED);
  for (let draw = 0; draw < DRAWS; draw += 1) count.look(flipSum(differences, source));
  return count.drawn();
}
