import { chanceHere } from "../methods/chanceHere";
import type { MeansCompared } from "../methods/compareMeans";
import { describe } from "../methods/describe";
import { spreadTest } from "../methods/spreadTest";
import { isHintOnly } from "../methods/verdict";
import type { Caution } from "../nouns/caution";
import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import type { Lazy } from "../nouns/lazy";
import type { Place } from "../nouns/place";
import { isBarelyFound, isWide } from "./barelyFound";
import { CLOSE } from "./close";
import { fewPairs, fewPlants } from "./fewPlants";
import { valuesOf } from "./harvest";
import { littleUsual } from "./littleUsual";
import { changeBetween, lossCautions } from "./lossCautions";
import { oddPlaces } from "./oddPlaces";
import type { DecidingPlant } from "./onePlantDecides";
import { readingCautions } from "./readingCautions";
import { type TwoGroups, withLostAsZero } from "./readTwoGroups";

/** The finding while its cautions are worked out. */
type Found = Omit<TwoTreatments, "cautions">;

/** The comparison's own figures, and the plant that decides it. */
interface Compared extends MeansCompared {
  readonly decides: Lazy<DecidingPlant | null>;
}

/**
 * What to look out for in a comparison of two treatments (METHODS 9.2), as far as the cell's arguments tell. None comes
 * up in more than 10 of 100 sound trials (tests/calibration/table.md); the bars below are set for that.
 */
export function twoTreatmentCautions(found: Found, groups: TwoGroups, compared: Compared): readonly Caution[] {
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

function isHintAtMost({ usual, tried, pairs }: Found): boolean {
  return isHintOnly(
    pairs === null ? { usual: usual.plants.length, tried: tried.plants.length } : { pairs: pairs.complete },
  );
}

function littleOrAlike({ usual, t }: Found, { g }: Compared): readonly Caution[] {
  const alike = !isKnown(t) && t.absent === "all-equal";
  return [...littleUsual(valuesOf(usual.plants), g), ...(alike ? [{ caution: "C17" } as const] : [])];
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

/**
 * One treatment varies more than twice as much, more than luck and a higher yield explain, and plant numbers differ, so
 * that its average is shakier (C07).
 */
function unlikeSpread({ usual, tried }: Found): readonly Caution[] {
  const [before, after] = [usual.plants.length, tried.plants.length];
  // of pairs, there are as many plants of each
  if (before === after || Math.min(before, after) < 4) return [];
  const [one, other] = [describe(valuesOf(usual.plants)).summary, describe(valuesOf(tried.plants)).summary];
  const [narrow, wide] = [Math.min(one.variance, other.variance), Math.max(one.variance, other.variance)];
  // twice the standard deviation is four times the variance
  if (wide <= 4 * narrow || !(spreadTest(one, other) < LUCK)) return [];
  const { name, role } = one.variance > other.variance ? usual : tried;
  return [{ caution: "C07", name, role }];
}

/** A gap in unevenness that luck gives less often than this is taken as real. */
const LUCK = 0.05;
/** Above this (150 %), a change is likely to be told as the wrong number of times. */
const TOLD_WRONG = 1.5;

function luckCautions(found: Found, compared: Compared): readonly Caution[] {
  const { change } = found;
  const resting = restsOnOnePlant(found, compared);
  return [
    ...(resting !== null ? [{ caution: "C21", place: resting } as const] : []),
    ...(checksDisagree(found, compared) ? [{ caution: "C22" } as const] : []),
    ...(isLikelyTooBig(found, compared) ? [{ caution: "C30" } as const] : []),
    ...(isKnown(change) && Math.abs(change) > TOLD_WRONG ? [{ caution: "C16", change } as const] : []),
  ];
}

/**
 * The plant without which the difference is not only lost but far from shown: p three times the bar or more (C21). A
 * difference just shown is lost without almost any plant, and then rests on none of them.
 */
function restsOnOnePlant({ confidence }: Found, { decides }: Compared): Place | null {
  const plant = decides();
  return plant !== null && plant.pWithout >= 3 * (1 - confidence) ? plant.place : null;
}

/**
 * Whether the verdict is a close one and the label swap says otherwise: the t test's p is near its bar, and the two stand
 * on opposite sides (C22). Further from the bar it is not close: where plant numbers and spread differ much, labels may
 * not be swapped, and the two disagree as a rule.
 */
function checksDisagree(found: Found, { pValue }: Compared): boolean {
  const swap = found.labelSwap();
  if (swap === null || !isKnown(pValue) || isHintAtMost(found)) return false;
  const alpha = 1 - found.confidence;
  const isClose = pValue > alpha / CLOSE && pValue < alpha * CLOSE;
  return isClose && pValue < alpha !== swap.p < alpha;
}

/**
 * A gain just found (see barelyFound.ts) with a wide range, or by a trial that was likely to miss half of it, is often
 * smaller in truth (C30).
 */
function isLikelyTooBig(found: Found, compared: Compared): boolean {
  const { change, changeRange, worthwhile, confidence } = found;
  const { standardError, usualMean, df } = compared;
  if (!isBarelyFound(found) || !isKnown(change)) return false;
  if (isWide(changeRange)) return true;
  if (!isKnown(standardError) || !isKnown(df)) return false;
  const halfway = ((worthwhile.size + Math.abs(change)) / 2) * usualMean;
  return chanceHere(halfway, { standardError, df, confidence }) < 0.5;
}
