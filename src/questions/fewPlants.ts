import { mostOneSidedFlip, mostOneSidedSplit } from "../methods/mostOneSided";
import type { Caution } from "../nouns/caution";

/** C01: what luck alone does with so few separate plants. */
export function fewPlants(usual: number, tried: number): Caution {
  return { caution: "C01", plants: [usual, tried], pairs: false, mostOneSided: mostOneSidedSplit(usual, tried) };
}

/** C01 for pairs. */
export function fewPairs(pairs: number): Caution {
  return { caution: "C01", plants: [pairs, pairs], pairs: true, mostOneSided: mostOneSidedFlip(pairs) };
}
