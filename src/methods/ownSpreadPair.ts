import type { Summary } from "../numerics/moments";
import type { Studentized } from "../numerics/studentized";
import { pairsOf } from "./allPairsTest";
import { ALPHA } from "./alpha";
import { rangeOf } from "./jointDistributions";
import type { RatioCurve } from "./ratioCurve";
import { shownToDiffer } from "./shownToDiffer";
import { tailTest } from "./tailTest";
import { welchDf } from "./welch";

/** A pair of treatments compared with their own spreads. */
export interface OwnSpreadPair {
  /** New − usual, in the values' unit, with its range of 95 % for all pairs together. */
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly pValue: number;
  readonly curve: RatioCurve;
}

/**
 * Games and Howell's comparison: each pair with its own spreads and Welch's degrees of freedom, all pairs allowed for.
 *
 * @param treatments how many there are in all
 * @returns null when one has fewer than two plants or neither varies
 *
 * Source: P. A. Games & J. F. Howell (1976), Journal of Educational Statistics 1, 113–125.
 */
export function ownSpreadPair(usual: Summary, tried: Summary, treatments: number): OwnSpreadPair | null {
  const gap = gapOf(usual, tried);
  if (gap === null) return null;
  const { difference, error, t, df } = gap;
  const range = rangeOf(treatments);
  const reach = (range.critical(ALPHA, df) / Math.SQRT2) * error;
  return {
    difference,
    low: difference - reach,
    high: difference + reach,
    pValue: range.tail(Math.SQRT2 * Math.abs(t), df),
    curve: ratioCurve(usual, tried, range),
  };
}

/** Whether the p-value of such a pair is below a level; null where there is none. */
export function ownSpreadBelow(pair: readonly [Summary, Summary], treatments: number, level: number): boolean | null {
  const gap = gapOf(...pair);
  if (gap === null) return null;
  const { t, df } = gap;
  const pValue = () => rangeOf(treatments).tail(Math.SQRT2 * Math.abs(t), df);
  return shownToDiffer({ t, df, comparisons: pairsOf(treatments), pValue }, level);
}

/** A difference over its standard error. */
interface Gap {
  readonly difference: number;
  readonly error: number;
  readonly t: number;
  readonly df: number;
}

function gapOf(usual: Summary, tried: Summary): Gap | null {
  const [before, after] = [usual.variance / usual.n, tried.variance / tried.n];
  const error = Math.sqrt(before + after);
  // fewer than two plants have no variance (NaN)
  if (!(error > 0)) return null;
  const difference = tried.mean - usual.mean;
  const df = welchDf({ share: before, n: usual.n }, { share: after, n: tried.n });
  return { difference, error, t: difference / error, df };
}

/** New − r·usual with degrees of freedom of its own for each r, as separateRatio.ts does for two treatments. */
function ratioCurve(usual: Summary, tried: Summary, range: Studentized): RatioCurve {
  const [before, after] = [usual.variance / usual.n, tried.variance / tried.n];
  const isBeyond = tailTest(range, ALPHA);
  const excludes = (ratio: number) => {
    const scaled = ratio ** 2 * before;
    const gap = Math.abs(tried.mean - ratio * usual.mean);
    if (scaled + after === 0) return gap > 0;
    const df = welchDf({ share: scaled, n: usual.n }, { share: after, n: tried.n });
    return isBeyond((Math.SQRT2 * gap) / Math.sqrt(scaled + after), df);
  };
  const g = (range.critical(ALPHA, usual.n - 1) ** 2 * before) / (2 * usual.mean ** 2);
  return { usualMean: usual.mean, triedMean: tried.mean, excludes, g };
}
