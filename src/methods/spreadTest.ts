import { upperTail } from "../numerics/fisherF";
import type { Summary } from "../numerics/moments";

/**
 * How often luck alone gives two groups whose unevenness (standard deviation over average) differs as much, either way:
 * the F test, each value taken as a share of its group's average, so that spread which grows with the yield counts as
 * alike. Values that have no average above 0 are compared as they are.
 *
 * @param one and other: two plants or more each
 * @returns a p-value; 0 when only one of the groups varies, NaN when neither does or a group is too small
 *
 * Source: G. W. Snedecor's F, R's var.test().
 */
export function spreadTest(one: Summary, other: Summary): number {
  const asShares = one.mean > 0 && other.mean > 0;
  const [first, second] = [one, other].map(({ mean, variance }) => (asShares ? variance / mean ** 2 : variance));
  const ratio = (first ?? Number.NaN) / (second ?? Number.NaN);
  const above = upperTail(ratio, one.n - 1, other.n - 1);
  const below = upperTail(1 / ratio, other.n - 1, one.n - 1);
  return 2 * Math.min(above, below);
}
