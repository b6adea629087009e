import type { LabelSwap } from "../nouns/findings/twoTreatments";
import { choose } from "../numerics/choose";
import { mean } from "../numerics/moments";
import { randomSource } from "../numerics/random";
import { sum } from "../numerics/sum";
import { drawSum } from "./drawSum";
import { splitsBeyond } from "./sumsBeyond";
import { DRAWS, MOST_SPLITS, SEED, swapCount } from "./swapCount";

/**
 * How often swapping the plants' labels gives a gap between the averages at least as big as the one seen, either way.
 *
 * All relabelings are looked at up to 3 000 000, else 20 000 drawn by lot from a fixed start.
 *
 * @param usual and tried: one plant or more each
 *
 * Source: R. A. Fisher (1935), The Design of Experiments, section 21; E. J. G. Pitman (1937), Supplement to the Journal
 * of the Royal Statistical Society 4, 119–130.
 */
export function labelSwap(usual: readonly number[], tried: readonly number[]): LabelSwap {
  // around the common average both groups' sums are equal in size, so the smaller group alone tells the gap
  const center = mean([...usual, ...tried]);
  const fewer = (usual.length < tried.length ? usual : tried).map((value) => value - center);
  const centered = [...usual, ...tried].map((value) => value - center);
  const size = fewer.length;
  const count = swapCount({ sum: sum(fewer), largest: largestSum(centered, size) });

  const splits = choose(centered.length, size);
  if (splits <= MOST_SPLITS) {
    count.add({ hits: splitsBeyond(centered, size, count.bar), tried: splits });
    return count.all();
  }
  const source = randomSource(SEED);
  for (let draw = 0; draw < DRAWS; draw += 1) count.look(drawSum(centered, size, source));
  return count.drawn();
}

/** The largest size that the sum of `size` of the values can have. */
function largestSum(values: readonly number[], size: number): number {
  const sorted = values.toSorted((left, right) => left - right);
  return Math.max(Math.abs(sum(sorted.slice(0, size))), Math.abs(sum(sorted.slice(-size))));
}
