import type { Known, Limits } from "../nouns/known";
import { quantile } from "../numerics/chiSquare";
import type { Summary } from "../numerics/moments";

/**
 * How much plants treated alike differ: standard deviation as a fraction of the average.
 *
 * @returns an Absence for fewer than two plants and for an average that is not above 0
 */
export function unevenness({ n, mean, variance }: Summary): Known {
  if (n === 0) return { absent: "no-usable-plants" };
  if (n < 2) return { absent: "one-plant-only" };
  return shareOfMean(Math.sqrt(variance), mean);
}

/** A deviation as a fraction of an average, both in the same unit; an Absence when the average is not above 0. */
export function shareOfMean(deviation: number, mean: number): Known {
  if (mean > 0) return deviation / mean;
  return { absent: mean === 0 ? "average-zero" : "average-below-zero" };
}

/** An unevenness and the degrees of freedom it is known from. */
export interface PooledUnevenness {
  readonly unevenness: Known;
  readonly df: number;
}

/**
 * The unevenness within treatments, pooled: √(Σ(nᵢ − 1)CVᵢ² / Σ(nᵢ − 1)). A treatment without an unevenness of its own
 * takes no part.
 *
 * @returns when no treatment has one, the first treatment's reason, and df 0
 */
export function pooledUnevenness(groups: readonly Summary[]): PooledUnevenness {
  let squares = 0;
  let df = 0;
  let why: Known = { absent: "no-usable-plants" };
  for (const group of groups.toReversed()) {
    const own = unevenness(group);
    if (typeof own === "number") {
      squares += (group.n - 1) * own ** 2;
      df += group.n - 1;
    } else why = own;
  }
  return { unevenness: df > 0 ? Math.sqrt(squares / df) : why, df };
}

/**
 * The 80 % range of an unevenness known from df degrees of freedom: it misses the true one low or high in 10 % each.
 *
 * @returns the unevenness' own Absence at both ends when there is none
 *
 * Source: (n − 1)s²/σ² is chi-square with n − 1 degrees of freedom, the average taken as known.
 */
export function unevennessLimits({ unevenness: share, df }: PooledUnevenness): Limits {
  if (typeof share !== "number") return { low: share, high: share };
  return { low: share * Math.sqrt(df / quantile(0.9, df)), high: share * Math.sqrt(df / quantile(0.1, df)) };
}
