import { chanceHere } from "../methods/chanceHere";
import type { MeansCompared } from "../methods/compareMeans";
import type { Caution } from "../nouns/caution";
import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import { fewPairs, fewPlants } from "./fewPlants";
import { valuesOf } from "./harvest";
import { littleUsual } from "./littleUsual";
import { changeBetween, lossCautions } from "./lossCautions";
import { oddPlaces } from "./oddPlaces";
import { readingCautions } from "./readingCautions";
import { type TwoGroups, withLostAsZero } from "./readTwoGroups";

/** The finding while its cautions are worked out. */
type Found = Omit<TwoTreatments, "cautions">;

/** What to look out for in a comparison of two treatments (METHODS 9.2), as far as the cell's arguments tell. */
export function twoTreatmentCautions(found: Found, groups: TwoGroups, compared: MeansCompared): readonly Caution[] {
  return [
    ...plantNumbers(found),
    ...littleOrAlike(found, compared),
    ...lostOnes(found, groups),
    ...oddOnes(found),
    ...unlikeSpread(found),
    ...luckCautions(found, compared),
    ...readingCautions([groups.usual, groups.tried]),
    { caution: "C12" },
  ];
}

function plantNumbers(found: Found): readonly Caution[] {
  const { usual, tried, pairs, nothingIn } = found;
  if (nothingIn !== null || !isHintAtMost(found)) return [];
  return [pairs === null ? fewPlants(usual.plants.length, tried.plants.length) : fewPairs(pairs.complete)];
}

/** Whether so few plants allow a hint at most (METHODS 4.3). */
function isHintAtMost({ usual, tried, pairs }: Found): boolean {
  return pairs === null ? Math.min(usual.plants.length, tried.plants.length) < 4 : pairs.complete < 6;
}

function littleOrAlike({ usual, t }: Found, { g, usualMean }: MeansCompared): readonly Caution[] {
  const little = usualMean === 0 ? littleUsual([0], g) : littleUsual(valuesOf(usual.plants), g);
  const alike = !isKnown(t) && t.absent === "all-equal";
  return [...little, ...(alike ? [{ caution: "C17" } as const] : [])];
}

function lostOnes(found: Found, groups: TwoGroups): readonly Caution[] {
  const { usualPlants, triedPlants } = withLostAsZero(groups);
  return lossCautions({
    usual: groups.usual,
    tried: groups.tried,
    change: found.change,
    changeLostAsZero: changeBetween(usualPlants, triedPlants),
    countedAsZero: found.lostPlants === "count as zero",
  });
}

function oddOnes({ usual, tried }: Found): readonly Caution[] {
  const places = [...oddPlaces(usual.plants), ...oddPlaces(tried.plants)];
  return places.length > 0 ? [{ caution: "C06", places }] : [];
}

/** One treatment varies more than twice as much, and plant numbers differ, so that its average is shakier (C07). */
function unlikeSpread({ usual, tried, pairs }: Found): readonly Caution[] {
  const [before, after] = [usual.plants.length, tried.plants.length];
  if (pairs !== null || before === after || Math.min(before, after) < 4) return [];
  if (!isKnown(usual.deviation) || !isKnown(tried.deviation)) return [];
  const wider = usual.deviation > tried.deviation ? usual : tried;
  const narrower = wider === usual ? tried.deviation : usual.deviation;
  const widest = wider === usual ? usual.deviation : tried.deviation;
  return widest > 2 * narrower ? [{ caution: "C07", name: wider.name, role: wider.role }] : [];
}

function luckCautions(found: Found, compared: MeansCompared): readonly Caution[] {
  const onePlant = found.onePlantDecides();
  return [
    ...(onePlant !== null ? [{ caution: "C21", place: onePlant } as const] : []),
    ...(checksDisagree(found, compared) ? [{ caution: "C22" } as const] : []),
    ...(isLikelyTooBig(found, compared) ? [{ caution: "C30" } as const] : []),
    ...(isKnown(found.change) && Math.abs(found.change) > 1 ? [{ caution: "C16", change: found.change } as const] : []),
  ];
}

/** Whether t test and label swap stand on opposite sides of the confidence asked for (C22). */
function checksDisagree(found: Found, { pValue }: MeansCompared): boolean {
  const swap = found.labelSwap();
  if (swap === null || !isKnown(pValue) || isHintAtMost(found)) return false;
  const alpha = 1 - found.confidence;
  return pValue < alpha !== swap.p < alpha;
}

/** A gain found with a wide range, or by a trial that was likely to miss half of it, is often smaller in truth (C30). */
function isLikelyTooBig(found: Found, compared: MeansCompared): boolean {
  const { rangeVerdict, change, changeRange, worthwhile, confidence } = found;
  const { standardError, usualMean, df } = compared;
  if (rangeVerdict === null || !/^(up|down)/.test(rangeVerdict) || !isKnown(change)) return false;
  const { low, high } = changeRange;
  if (!isKnown(low) || !isKnown(high) || high - low > 1) return true;
  if (!isKnown(standardError) || !isKnown(df)) return false;
  const halfway = ((worthwhile.size + Math.abs(change)) / 2) * usualMean;
  return chanceHere(halfway, { standardError, df, confidence }) < 0.5;
}
