import { quantile, upperTail } from "../numerics/studentizedRange";
import type { JointTest } from "./againstUsualTest";
import type { TreatmentModel } from "./treatmentModel";

const ALPHA = 0.05;

/**
 * Tukey's test of all pairs (Tukey–Kramer where plant numbers differ): q = √2·|t| against the studentized range.
 *
 * Source: C. Y. Kramer (1956), Biometrics 12, 307–310; checked against R's TukeyHSD().
 */
export function allPairsTest({ means, df }: TreatmentModel): JointTest {
  return {
    pValue: (t) => upperTail(Math.SQRT2 * Math.abs(t), means.length, df),
    critical: quantile(ALPHA, means.length, df) / Math.SQRT2,
  };
}
