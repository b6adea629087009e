import { compareMeans, type MeansAsked } from "../methods/compareMeans";
import { isKnown } from "../nouns/known";
import type { Place } from "../nouns/place";
import { valuesOf } from "./harvest";
import type { TwoGroups } from "./readTwoGroups";

/** A group must still hold two plants when one is left out. */
const LEAST = 3;

/** A plant without which a difference is lost, and the p-value of what is left; 1 when that points the other way. */
export interface DecidingPlant {
  readonly place: Place;
  readonly pWithout: number;
}

/**
 * The one plant without which a difference that luck does not explain is lost, before the caps for few plants; with
 * pairs, the new plant of that pair. Of several such plants the one that decides most; null when there is none.
 */
export function onePlantDecides(groups: TwoGroups, asked: MeansAsked): DecidingPlant | null {
  const alpha = 1 - asked.confidence;
  const whole = surprise(valuesOf(groups.usualPlants), valuesOf(groups.triedPlants), asked);
  if (whole === null || whole.p >= alpha) return null;
  let decides: DecidingPlant | null = null;
  for (const { place, usual, tried } of leavingOneOut(groups, asked)) {
    const p = doubt(surprise(usual, tried, asked), whole.up);
    if (p >= alpha && p > (decides?.pWithout ?? 0)) decides = { place, pWithout: p };
  }
  return decides;
}

/** How much the rest speaks against the whole: its p-value, 1 when it points the other way or nowhere. */
function doubt(rest: Surprise | null, up: boolean): number {
  return rest !== null && rest.up === up ? rest.p : 1;
}

interface Surprise {
  readonly p: number;
  readonly up: boolean;
}

/** The p-value and direction of a comparison that could be made. */
function surprise(usual: readonly number[], tried: readonly number[], asked: MeansAsked): Surprise | null {
  const { pValue, difference, change } = compareMeans(usual, tried, asked);
  if (!isKnown(pValue) || !isKnown(difference) || !isKnown(change)) return null;
  return { p: pValue, up: difference > 0 };
}

interface LeftOut {
  readonly place: Place;
  readonly usual: readonly number[];
  readonly tried: readonly number[];
}

function* leavingOneOut(groups: TwoGroups, { layout }: MeansAsked): Generator<LeftOut> {
  const { usualPlants, triedPlants } = groups;
  const [usual, tried] = [valuesOf(usualPlants), valuesOf(triedPlants)];
  if (tried.length >= LEAST) {
    for (const [at, { place }] of triedPlants.entries()) {
      yield { place, usual: layout === "pairs" ? without(usual, at) : usual, tried: without(tried, at) };
    }
  }
  if (layout === "pairs" || usual.length < LEAST) return;
  for (const [at, { place }] of usualPlants.entries()) yield { place, usual: without(usual, at), tried };
}

function without(values: readonly number[], index: number): readonly number[] {
  return values.filter((_, at) => at !== index);
}
