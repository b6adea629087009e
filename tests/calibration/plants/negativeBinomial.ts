import type { RandomSource } from "../../../src/numerics/random";

/** A count's average and variance; the variance is the larger. */
export interface CountSpread {
  readonly mean: number;
  readonly variance: number;
}

/**
 * The least count whose cumulative chance is at least `u`: for uniform u in [0, 1) a negative-binomial value.
 *
 * Source: inversion by a walk up the counts, L. Devroye (1986), Non-Uniform Random Variate Generation, III.2.
 */
export function negativeBinomialAt(u: number, { mean, variance }: CountSpread): number {
  const size = mean ** 2 / (variance - mean);
  const again = 1 - mean / variance;
  let chance = (mean / variance) ** size;
  let below = chance;
  let count = 0;
  while (below < u && chance > 0) {
    chance *= ((size + count) / (count + 1)) * again;
    below += chance;
    count += 1;
  }
  return count;
}

/** Draws a negative-binomial count. */
export function negativeBinomial(spread: CountSpread, source: RandomSource): number {
  return negativeBinomialAt(source.uniform(), spread);
}
