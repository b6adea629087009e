import { mean } from "../numerics/moments";
import { type RandomSource, randomSource } from "../numerics/random";
import { type Duo, unscaledVariance } from "./contrast";
import { DRAWS, SEED } from "./swapCount";
import type { PlantInModel, TreatmentModel } from "./treatmentModel";

/** Sizes of t that tie but for rounding must count as ties. */
const SLACK = 1e-9;

/**
 * How often swapping the plants' labels gives one of several comparisons a t at least as big as the one asked about,
 * either way. Labels are swapped among all plants, and with beds within each bed. 20 000 relabelings are drawn by lot
 * from a fixed start; the real one counts among them, so that no share is 0.
 *
 * @param plants those of the model, which was fitted to them and leaves something to test by
 * @param duos the comparisons made together, one or more
 * @returns by a comparison's t, its p-value, allowing for all of them
 *
 * Source: the single-step largest-t method of P. H. Westfall & S. S. Young (1993), Resampling-Based Multiple Testing,
 * Wiley; labels swapped as in labelSwap.ts.
 */
export function manySwap(
  plants: readonly PlantInModel[],
  model: TreatmentModel,
  duos: readonly Duo[],
): (t: number) => number {
  const pools = poolsOf(plants, model.squares.beds !== null);
  const sumOfSquares = pools.reduce((sum, { gaps }) => sum + dot(gaps, gaps), 0);
  const compared = duos.map((duo) => ({ ...duo, spread: Math.sqrt(unscaledVariance(model, duo)) }));
  const source = randomSource(SEED);
  const largest = Array.from({ length: DRAWS }, () => {
    const sums = new Float64Array(model.means.length);
    for (const pool of pools) dealOut(pool, sums, source);
    return largestT(sums);
  });
  return (t) => {
    const bar = Math.abs(t) * (1 - SLACK);
    return (1 + largest.filter((size) => size >= bar).length) / (DRAWS + 1);
  };

  /** Swapping changes the treatments' sums alone: neither the beds' averages nor how many of which stand where. */
  function largestT(sums: Float64Array): number {
    const effects = model.unscaledCovariance.map((row) => dot(row, sums));
    const deviation = Math.sqrt(Math.max(0, sumOfSquares - dot(effects, sums)) / model.df);
    let most = 0;
    for (const { usual, tried, spread } of compared) {
      most = Math.max(most, Math.abs((effects[tried] as number) - (effects[usual] as number)) / (deviation * spread));
    }
    return most;
  }
}

/** Plants whose labels may be swapped, those of one bed or all: each value's gap from their average, and the labels. */
interface Pool {
  /** Every deal leaves them in another order. */
  readonly gaps: Float64Array;
  readonly treatments: readonly number[];
}

function poolsOf(plants: readonly PlantInModel[], inBeds: boolean): readonly Pool[] {
  const beds = inBeds ? [...new Set(plants.map(({ bed }) => bed))] : [null];
  return beds.map((bed) => {
    const here = plants.filter((plant) => bed === null || plant.bed === bed);
    const average = mean(here.map(({ value }) => value));
    return {
      gaps: Float64Array.from(here, ({ value }) => value - average),
      treatments: here.map(({ treatment }) => treatment),
    };
  });
}

/** Deals the values out to the labels by lot and adds them to the treatments' sums (Durstenfeld, see drawSum.ts). */
function dealOut({ gaps, treatments }: Pool, sums: Float64Array, source: RandomSource): void {
  const plants = gaps.length;
  for (let place = 0; place < plants; place += 1) {
    const from = place + source.below(plants - place);
    const drawn = gaps[from] as number;
    gaps[from] = gaps[place] as number;
    gaps[place] = drawn;
    const treatment = treatments[place] as number;
    sums[treatment] = (sums[treatment] as number) + drawn;
  }
}

function dot(left: ArrayLike<number>, right: ArrayLike<number>): number {
  let sum = 0;
  for (let at = 0; at < left.length; at += 1) sum += (left[at] as number) * (right[at] as number);
  return sum;
}
