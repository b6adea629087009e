import type { Summary } from "../numerics/moments";
import { quantile, upperTail } from "../numerics/studentizedRange";
import type { RatioCurve } from "./ratioCurve";
import { welchDf } from "./welch";

const ALPHA = 0.05;

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
  if (usual.n < 2 || tried.n < 2) return null;
  const [before, after] = [usual.variance / usual.n, tried.variance / tried.n];
  const error = Math.sqrt(before + after);
  if (!(error > 0)) return null;
  const difference = tried.mean - usual.mean;
  const df = welchDf({ share: before, n: usual.n }, { share: after, n: tried.n });
  const reach = (quantile(ALPHA, treatments, df) / Math.SQRT2) * error;
  return {
    difference,
    low: difference - reach,
    high: difference + reach,
    pValue: tail(difference / error, treatments, df),
    curve: ratioCurve(usual, tried, treatments),
  };
}

function tail(t: number, treatments: number, df: number): number {
  return upperTail(Math.SQRT2 * Math.abs(t), treatments, df);
}

/** New − r·usual with degrees of freedom of its own for each r, as separateRatio.ts does for two treatments. */
function ratioCurve(usual: Summary, tried: Summary, treatments: number): RatioCurve {
  const [before, after] = [usual.variance / usual.n, tried.variance / tried.n];
  const critical = (df: number) => quantile(ALPHA, treatments, df) / Math.SQRT2;
  const excludes = (ratio: number) => {
    const scaled = ratio ** 2 * before;
    const gap = Math.abs(tried.mean - ratio * usual.mean);
    if (scaled + after === 0) return gap > 0;
    const t = gap / Math.sqrt(scaled + after);
    const df = welchDf({ share: scaled, n: usual.n }, { share: after, n: tried.n });
    // the critical value falls with df, so those of the whole df on either side decide nearly always
    if (t > critical(Math.max(1, Math.floor(df)))) return true;
    if (t < critical(Math.ceil(df))) return false;
    return tail(t, treatments, df) < ALPHA;
  };
  const g = (critical(usual.n - 1) ** 2 * before) / usual.mean ** 2;
  return { usualMean: usual.mean, triedMean: tried.mean, excludes, g };
}
