import type { Summary } from "../numerics/moments";
import { remembered } from "../numerics/remembered";
import type { Studentized } from "../numerics/studentized";
import { twoSidedCritical, twoSidedTail } from "../numerics/studentT";
import type { RatioCurve } from "./ratioCurve";
import { tailTest } from "./tailTest";
import { welchDf } from "./welch";

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
  const isBeyond = tailTest(studentT, alpha);
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

const studentT: Studentized = { tail: twoSidedTail, critical: remembered(twoSidedCritical) };
