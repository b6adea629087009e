import type { Block } from "../experiment";
import { fewPlants, unlike, veryUneven } from "./beyond";
import { bedsCautions, cleanCautions } from "./cleanCautions";
import { lessWanted } from "./lessWanted";
import { lostPlants } from "./lostPlants";
import { manyTrials } from "./manyTrials";
import { nothingDiffers } from "./nothingDiffers";
import { pairs } from "./pairs";
import { plans } from "./plans";
import { againstUsual, allPairs, severalCautions } from "./severalTreatments";
import { swaps } from "./swaps";
import { aboveWorthwhile, atWorthwhile, belowWorthwhile } from "./trueChange";

/** Every block of the page, in its order. */
export const blocks: readonly Block[] = [
  nothingDiffers,
  belowWorthwhile,
  atWorthwhile,
  aboveWorthwhile,
  lessWanted,
  pairs,
  againstUsual,
  allPairs,
  manyTrials,
  plans,
  cleanCautions,
  bedsCautions,
  severalCautions,
  swaps,
  lostPlants,
  unlike,
  veryUneven,
  fewPlants,
];
