import type { RandomSource } from "../../src/numerics/random";

/**
 * One simulated trial: draws the plants, asks the shipped function what a grower would ask it, and names what
 * happened ("verdict level", "percent range holds"), each thing once at most.
 */
export type Experiment = (source: RandomSource) => readonly string[];

/** One kind of trial, simulated many times over. */
export interface Case {
  /** What describes it, under the block's headings; the first of them together are unlike any other case's. */
  readonly about: readonly string[];
  readonly trials: number;
  readonly experiment: Experiment;
}

/** A share of a case's trials: how often any one of these things happened (things that exclude each other). */
export interface Share {
  readonly heading: string;
  readonly events: readonly string[];
  /** What issue 5 promises of it, in every case of the block; nothing when left out. */
  readonly promise?: { readonly least?: number; readonly most?: number };
}

/** Cases of one sort: a table with a line below it that says what it means. */
export interface Block {
  readonly title: string;
  readonly headings: readonly string[];
  readonly shares: readonly Share[];
  readonly cases: readonly Case[];
  /** For someone who teaches growers; figures come from the shares as simulated. */
  readonly meaning: (seen: Seen) => string;
}

/** The smallest and the largest of a block's shares, by heading. */
export interface Seen {
  /** Among the cases that have these words among what describes them; among all when left out. */
  readonly least: (heading: string, where?: string) => string;
  readonly most: (heading: string, where?: string) => string;
}
