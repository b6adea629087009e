import type { LabelSwap } from "../nouns/findings/twoTreatments";

/** Up to this many relabelings are all looked at: 12 against 12 plants are 2 704 156. */
export const MOST_SPLITS = 3_000_000;
/** Up to this many pairs all sign flips are looked at: 2²⁰ are 1 048 576. */
export const MOST_FLIPS = 20;
/** Relabelings drawn by lot where there are too many. */
export const DRAWS = 20_000;
/** The lot's fixed start: the same data give the same answer on every machine. */
export const SEED = 1;

/** Sums that tie but for rounding must count as ties. */
const SLACK = 1e-9;

/** What a relabeling's sum is held against. */
export interface Seen {
  /** The sum of the labels as they are. */
  readonly sum: number;
  /** The largest size of any relabeling's sum. */
  readonly largest: number;
}

/** A counter of relabelings and of those at least as far from 0 as the one seen. */
export interface SwapCount {
  readonly look: (sum: number) => void;
  /** A sum at least this far from 0 is a hit. */
  readonly bar: number;
  /** Counts relabelings that were held against the bar elsewhere. */
  readonly add: (found: { readonly hits: number; readonly tried: number }) => void;
  /** Every relabeling was looked at: p is the share of hits. */
  readonly all: () => LabelSwap;
  /** Some were drawn by lot: the real one counts among them, so that p is never 0. */
  readonly drawn: () => LabelSwap;
}

/** Starts counting. */
export function swapCount(seen: Seen): SwapCount {
  const bar = Math.abs(seen.sum) - SLACK * seen.largest;
  let tried = 0;
  let hits = 0;
  return {
    bar,
    add(found) {
      tried += found.tried;
      hits += found.hits;
    },
    look(sum) {
      tried += 1;
      if (Math.abs(sum) >= bar) hits += 1;
    },
    all: () => ({ p: hits / tried, hits, tried, exact: true }),
    drawn: () => ({ p: (hits + 1) / (tried + 1), hits, tried, exact: false }),
  };
}
