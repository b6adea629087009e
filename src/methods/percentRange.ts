import type { Absence, Known, Limits } from "../nouns/known";
import type { RatioCurve } from "./ratioCurve";

/** How far the walk goes: down to this share of the ratio seen, up to one over it. */
const SMALLEST = 1e-6;
/** One step of the walk: 1 %. */
const STEP = 1.01;

/** The range of a percent change, as fractions of the usual average: 0.1 is 10 % more, −1 is the largest fall. */
export interface PercentRange extends Limits {
  /** See RatioCurve. */
  readonly g: number;
}

/**
 * The range of the percent change: every change that the test does not speak against, from the change seen outward to
 * where the test first does. So no change lies outside the range exactly when the test finds a difference.
 *
 * @param differs what the test itself says about no change: its p-value < 1 − confidence
 * @returns an Absence at both ends when the usual average is not above 0 or the new one below it; at one end where the
 *   walk (1 % steps to a millionth and to a million times) meets no limit. Further pieces beyond the first limits,
 *   which come up with two or three plants and with closely following pairs, are left out.
 *
 * Source: inversion of a test over ratios, Fieller (1954), see ratioCurve.ts.
 */
export function percentRange(curve: RatioCurve, differs: boolean): PercentRange {
  const { usualMean, triedMean, g } = curve;
  if (!(usualMean > 0)) return { ...nowhere({ absent: "usual-not-above-zero" }), g };
  if (triedMean < 0) return { ...nowhere({ absent: "new-below-zero" }), g };

  const seen = triedMean / usualMean;
  const excludes = (ratio: number) => (ratio === 1 ? differs : curve.excludes(ratio));
  const lowest = differs ? seen : Math.min(1, seen);
  const highest = differs ? seen : Math.max(1, seen);
  const low = firstExcluded(excludes, lowest, downward(lowest, SMALLEST * seen));
  const high = firstExcluded(excludes, highest, upward(highest, Math.max(1, seen) / SMALLEST));
  return {
    low: low === null ? { absent: "no-lower-limit" } : low - 1,
    high: high === null ? { absent: "no-upper-limit" } : high - 1,
    g,
  };
}

function nowhere(why: Absence): { readonly low: Known; readonly high: Known } {
  return { low: why, high: why };
}

/** Walks along the ratios to the first that is excluded; where the range ends before it, or null for nowhere. */
function firstExcluded(excludes: (ratio: number) => boolean, start: number, ratios: Iterable<number>): number | null {
  let inside = start;
  for (const ratio of ratios) {
    if (excludes(ratio)) return lastInside(excludes, inside, ratio);
    inside = ratio;
  }
  return null;
}

/** Ratios above the start. A step over 1 stops there, because the answer at 1 is the test's own. */
function* upward(start: number, end: number): Generator<number> {
  let ratio = Math.max(start, SMALLEST);
  while (ratio < end) {
    const next = Math.min(ratio * STEP, end);
    ratio = ratio < 1 && next > 1 ? 1 : next;
    yield ratio;
  }
}

/** Ratios below the start, 0 last. */
function* downward(start: number, end: number): Generator<number> {
  let ratio = start;
  while (ratio > end) {
    const next = Math.max(ratio / STEP, end);
    ratio = ratio > 1 && next < 1 ? 1 : next;
    yield ratio;
  }
  yield 0;
}

/** Halves the step to neighbouring doubles and keeps the end that still belongs to the range. */
function lastInside(excludes: (ratio: number) => boolean, inside: number, outside: number): number {
  let [kept, lost] = [inside, outside];
  for (;;) {
    const middle = kept + (lost - kept) / 2;
    if (middle === kept || middle === lost) return kept;
    if (excludes(middle)) lost = middle;
    else kept = middle;
  }
}
