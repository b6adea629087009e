import { choose } from "../numerics/choose";

/**
 * The smallest share of relabelings that two groups of separate plants can reach, both directions counted: how often
 * luck alone gives the most one-sided split. In (0, 1].
 */
export function mostOneSidedSplit(usual: number, tried: number): number {
  return Math.min(1, 2 / choose(usual + tried, tried));
}

/** The same for swaps within pairs: 2/2ⁿ, at most 1. */
export function mostOneSidedFlip(pairs: number): number {
  return Math.min(1, 2 / 2 ** pairs);
}
