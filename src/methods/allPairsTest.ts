import type { JointTest } from "./againstUsualTest";
import { ALPHA } from "./alpha";
import { rangeOf } from "./jointDistributions";
import { shownToDiffer } from "./shownToDiffer";
import type { TreatmentModel } from "./treatmentModel";

/**
 * Tukey's test of all pairs (Tukey–Kramer where plant numbers differ): q = √2·|t| against the studentized range.
 *
 * Source: C. Y. Kramer (1956), Biometrics 12, 307–310; checked against R's TukeyHSD().
 */
export function allPairsTest({ means, df }: TreatmentModel): JointTest {
  const { tail, critical } = rangeOf(means.length);
  const comparisons = pairsOf(means.length);
  const pValue = (t: number) => tail(Math.SQRT2 * Math.abs(t), df);
  return {
    pValue,
    isBelow: (t, level) => shownToDiffer({ t, df, comparisons, pValue: () => pValue(t) }, level),
    get critical() {
      return critical(ALPHA, df) / Math.SQRT2;
    },
  };
}

/** How many pairs k things make. */
export function pairsOf(k: number): number {
  return (k * (k - 1)) / 2;
}
