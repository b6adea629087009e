import { covariance, type Duo } from "./contrast";
import { type RatioCurve, steadyRatio } from "./ratioCurve";
import type { TreatmentModel } from "./treatmentModel";

/**
 * The ratio test of two treatments of a model. Where beds differ, a ratio other than 1 leaves a part of the beds in the
 * comparison, which widens the range; at 1 it is the test of the difference itself.
 *
 * @param critical how many standard errors the comparison allows: Dunnett's, Tukey's over √2, or t
 *
 * Source: Fieller (1954), see ratioCurve.ts; V(r) = MSE(c_BB + r²c_AA − 2r·c_AB) + σ²_bed(1 − r)²/b.
 */
export function modelRatio(model: TreatmentModel, { usual, tried }: Duo, critical: number): RatioCurve {
  const { means, unscaledCovariance: c, meanSquare, bedShare } = model;
  const [both, base, new_] = [covariance(c, tried, usual), covariance(c, usual, usual), covariance(c, tried, tried)];
  return steadyRatio({
    usualMean: means[usual] ?? Number.NaN,
    triedMean: means[tried] ?? Number.NaN,
    critical,
    varianceAt: (ratio) => meanSquare * (new_ + ratio ** 2 * base - 2 * ratio * both) + bedShare * (1 - ratio) ** 2,
    usualVariance: meanSquare * base,
  });
}
