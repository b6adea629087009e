import { describe } from "../methods/describe";
import type { Caution } from "../nouns/caution";

/**
 * From here the base is called unsteady. At 1 the range of the usual average reaches 0; with four plants at 50 %
 * unevenness that comes up in one sound trial of six, 1.5 in one of twenty (tests/calibration).
 */
const UNSTEADY = 1.5;

/**
 * C05: the usual plants are a weak base for a percent. They bore almost nothing (an average of 0, or half of the plants
 * or more at 0), or they are so few and so uneven that the range of their average reaches well below 0.
 *
 * @param g Fieller's g of the comparison; null where there is none
 */
export function littleUsual(usual: readonly number[], g: number | null): readonly Caution[] {
  const zeros = usual.filter((value) => value === 0).length;
  if (usual.length > 0 && (2 * zeros >= usual.length || describe(usual).mean === 0))
    return [{ caution: "C05", because: "little" }];
  return g !== null && g >= UNSTEADY ? [{ caution: "C05", because: "unsteady" }] : [];
}
