import { betaKernel, betaTails, type Shape } from "./incompleteBeta";
import { solveInLogs } from "./solveInLogs";

/** Which share is known: below the ratio looked for, or above it. Give the smaller of the two. */
export interface KnownShare {
  readonly side: "lower" | "upper";
  /** In (0, 1). */
  readonly share: number;
}

/**
 * The ratio r = x/(1 − x) that splits a Beta(a, b) variable x into the wanted shares.
 *
 * The quantiles of t, F and beta are all simple functions of this ratio; as a ratio neither end loses digits.
 *
 * @param start a first guess at r
 */
export function betaRatioQuantile(known: KnownShare, shape: Shape, start: number): number {
  const { side, share } = known;
  const rising = side === "lower";
  return solveInLogs({ area: share, rising }, start, (ratio) => {
    const split = { x: ratio / (1 + ratio), y: 1 / (1 + ratio) };
    const slope = betaKernel(split, shape);
    const area = betaTails(split, shape, slope)[side];
    const bend = shape.a * split.y - shape.b * split.x;
    return { area, growth: rising ? slope : -slope, bend };
  });
}

/** A lower share p in (0, 1) told from the side where it is small; 1 − p is exact there. */
export function smallerShare(p: number): KnownShare {
  return p <= 0.5 ? { side: "lower", share: p } : { side: "upper", share: 1 - p };
}
