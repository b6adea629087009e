import { compareMeans } from "../methods/compareMeans";
import type { UpDown } from "../nouns/findings/upDown";
import { isKnown, type Limits } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { readFraction } from "../ranges/readFraction";
import { sameUnit } from "../ranges/sameUnit";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { type HarvestRule, readHarvest, valuesOf } from "./harvest";
import { lossesLeftOut } from "./lossesLeftOut";
import { plantCautions } from "./plantCautions";
import { readingCautions } from "./readingCautions";

const CONFIDENCE = 0.95;
const RULE: HarvestRule = { negatives: "refuse", lostPlants: "leave out" };
const NO_RANGE: Limits = { low: { absent: "single-figures" }, high: { absent: "single-figures" } };

/** How many per cent more or less is the new than the usual? Two numbers, or two ranges of plants. */
export function upDown(given: Given): UpDown | Problem {
  const read = allRead({
    usual: readHarvest(given.usual, "usual", RULE),
    tried: readHarvest(given.new, "new", RULE),
    confidence: readFraction(given.confidence, "confidence", CONFIDENCE),
  });
  if (isProblem(read)) return read;
  const { usual, tried, confidence } = read;
  const unlike = sameUnit(usual.sample, tried.sample);
  if (unlike !== null) return unlike;
  const [before, after] = [valuesOf(usual.plants), valuesOf(tried.plants)];
  const compared = compareMeans(before, after, { layout: "separate", confidence });
  const { usualMean, triedMean, change, changeRange, g } = compared;
  const single = usual.sample.entries.length === 1 && tried.sample.entries.length === 1;
  return {
    finding: "up-down",
    names: { usual: usual.sample.name, tried: tried.sample.name },
    unit: usual.sample.unit ?? tried.sample.unit,
    single,
    confidence,
    usualMean,
    triedMean,
    usualPlants: before.length,
    triedPlants: after.length,
    change,
    changeRange: single ? NO_RANGE : changeRange,
    timesAsMuch: isKnown(change) ? triedMean / usualMean : change,
    cautions: lazy(() => [
      ...(single ? [] : plantCautions({ usual: usual.plants, tried: tried.plants, how: "separate", g })),
      ...lossesLeftOut(usual.sample, tried.sample, change),
      ...(isKnown(change) && Math.abs(change) > 1 ? [{ caution: "C16", change } as const] : []),
      ...readingCautions([usual.sample, tried.sample]),
      { caution: "C12" },
    ]),
  };
}

/** Why a percent that is due cannot be given: the usual is 0. Null when there is a percent. */
export function noPercent({ change, triedMean }: UpDown): Problem | null {
  return isKnown(change) ? null : { problem: "usual-zero", tried: triedMean };
}
