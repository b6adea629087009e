import { type Absence, isKnown, type Known, type Limits } from "../nouns/known";
import { type Summary, summary } from "../numerics/moments";
import type { MeanComparison } from "./meanComparison";
import { paired } from "./paired";
import { pairedRatio } from "./pairedRatio";
import { percentRange } from "./percentRange";
import { pooledRatio } from "./pooledRatio";
import type { RatioCurve } from "./ratioCurve";
import { separateRatio } from "./separateRatio";
import { studentPooled } from "./studentPooled";
import { welch } from "./welch";

/** What is taken of the plants: separate ones, separate ones that vary equally, or pairs index by index. */
export type Layout = "separate" | "equal unevenness" | "pairs";

/** How two averages are to be compared. */
export interface MeansAsked {
  readonly layout: Layout;
  /** The share of such ranges that would hold the true change, in (0, 1). */
  readonly confidence: number;
}

/** Two averages compared: the difference in the values' unit, the change as a fraction of the usual average. */
export interface MeansCompared {
  readonly usualMean: number;
  readonly triedMean: number;
  readonly difference: Known;
  readonly differenceRange: Limits;
  readonly change: Known;
  readonly changeRange: Limits;
  readonly t: Known;
  readonly df: Known;
  readonly pValue: Known;
  /** Standard error of the difference. */
  readonly standardError: Known;
  /** Fieller's g (see RatioCurve); null where there is no range. */
  readonly g: number | null;
}

/**
 * Compares the averages of one plant or more each; with pairs, of equally many.
 *
 * Where there is a difference but no test of it (one plant, no variation), the ranges hold the reason.
 */
export function compareMeans(usual: readonly number[], tried: readonly number[], asked: MeansAsked): MeansCompared {
  const [before, after] = [summary(usual), summary(tried)];
  const groups: Groups = { usual, tried, before, after };
  const change = changeOf(before.mean, after.mean);
  const test = testOf(groups, asked);
  const means = { usualMean: before.mean, triedMean: after.mean, change };
  if ("absent" in test) return { ...means, ...untested(after.mean - before.mean, change, test) };
  const { difference, low, high, t, df, pValue, standardError } = test;
  const range = isKnown(change)
    ? percentRange(curveOf(groups, asked), pValue < 1 - asked.confidence)
    : { low: change, high: change, g: null };
  return {
    difference,
    differenceRange: { low, high },
    changeRange: { low: range.low, high: range.high },
    t,
    df,
    pValue,
    standardError,
    g: range.g,
    ...means,
  };
}

/** New over usual, less 1; an Absence when the usual average is not above 0 or the new one below it. */
export function changeOf(usualMean: number, triedMean: number): Known {
  if (!(usualMean > 0)) return { absent: "usual-not-above-zero" };
  return triedMean < 0 ? { absent: "new-below-zero" } : triedMean / usualMean - 1;
}

/** Both groups and their summaries, which long columns are to be read for once only. */
interface Groups {
  readonly usual: readonly number[];
  readonly tried: readonly number[];
  readonly before: Summary;
  readonly after: Summary;
}

function testOf({ usual, tried, before, after }: Groups, { layout, confidence }: MeansAsked): MeanComparison | Absence {
  if (layout === "pairs") return paired(usual, tried, confidence);
  const test = layout === "separate" ? welch : studentPooled;
  return test(before, after, confidence);
}

function curveOf({ usual, tried, before, after }: Groups, { layout, confidence }: MeansAsked): RatioCurve {
  if (layout === "pairs") return pairedRatio(usual, tried, confidence);
  const curve = layout === "separate" ? separateRatio : pooledRatio;
  return curve(before, after, confidence);
}

function untested(
  difference: number,
  change: Known,
  why: Absence,
): Omit<MeansCompared, "usualMean" | "triedMean" | "change"> {
  const none = { low: why, high: why };
  return {
    difference,
    differenceRange: none,
    changeRange: isKnown(change) ? none : { low: change, high: change },
    t: why,
    df: why,
    pValue: why,
    standardError: why,
    g: null,
  };
}
