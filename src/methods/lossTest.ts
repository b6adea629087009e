import type { Known } from "../nouns/known";
import { fisherExactTwoSided } from "../numerics/hypergeometric";

/** A treatment's plants: how many were lost, and how many lived to be counted. Whole numbers. */
export interface LostAndKept {
  readonly lost: number;
  readonly kept: number;
}

/**
 * Whether one treatment lost more plants than luck explains: Fisher's exact test, two-sided p in (0, 1].
 *
 * @returns an Absence when no plant was lost
 */
export function lossTest(usual: LostAndKept, tried: LostAndKept): Known {
  if (usual.lost + tried.lost === 0) return { absent: "no-losses" };
  return fisherExactTwoSided(tried.lost, tried.kept, usual.lost, usual.kept);
}
