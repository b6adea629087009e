import type { Summary } from "../numerics/moments";
import { remembered } from "../numerics/remembered";
import { twoSidedCritical, twoSidedTail } from "../numerics/studentT";
import type { RatioCurve } from "./ratioCurve";
import { welchDf } from "./welch";

/** Well above the rounding of a critical value, so that a comparison decided by more needs no exact tail. */
const CLEARLY = 1 + 1e-9;

/**
 * The ratio test for separate plants: Welch's test of new − r·usual, its degrees of freedom worked out anew for each r.
 *
 * @param usual and tried: two plants or more each, not all equal
 * @param confidence in (0, 1)
 *
 * Source: Fieller's idea (1954, see ratioCurve.ts) with Welch's degrees of freedom (1947, see welch.ts).
 */
export function separateRatio(usual: Summary, tried: Summary, confidence: number): RatioCurve {
  const alpha = 1 - confidence;
  const isBeyond = tailTest(alpha);
  const usualShare = usual.variance / usual.n;
  const triedShare = tried.variance / tried.n;

  const excludes = (ratio: number) => {
    const scaledShare = ratio ** 2 * usualShare;
    const gap = Math.abs(tried.mean - ratio * usual.mean);
    const variance = triedShare + scaledShare;
    if (variance === 0) return gap > 0;
    const df = welchDf({ share: scaledShare, n: usual.n }, { share: triedShare, n: tried.n });
    return isBeyond(gap / Math.sqrt(variance), df);
  };
  const g = (twoSidedCritical(alpha, usual.n - 1) ** 2 * usualShare) / usual.mean ** 2;
  return { usualMean: usual.mean, triedMean: tried.mean, excludes, g };
}

/** Critical values are kept for every eighth of a degree of freedom. */
const PARTS = 8;

const keptCritical = remembered(twoSidedCritical);

/**
 * Whether P(|T| ≥ t) < alpha. The critical value falls with df, so those kept on either side of df decide nearly
 * always; the tail itself is worked out only in between.
 */
function tailTest(alpha: number): (t: number, df: number) => boolean {
  const kept: number[] = [];
  const criticalAt = (part: number) => (kept[part] ??= keptCritical(alpha, part / PARTS));
  return (t, df) => {
    if (t > CLEARLY * criticalAt(Math.floor(df * PARTS))) return true;
    if (t * CLEARLY < criticalAt(Math.ceil(df * PARTS))) return false;
    return twoSidedTail(t, df) < alpha;
  };
}
