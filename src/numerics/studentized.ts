import { stirlingError } from "./saddlePoint";
import { type Area, solveInLogs } from "./solveInLogs";

/** A statistic X/S: X of a known distribution, S an independent estimate of its spread (χ/√df). */
export interface Studentized {
  /** P(X/S > d), 1 for d ≤ 0; df above 0, fractions and Infinity welcome; NaN outside the domain. */
  readonly tail: (d: number, df: number) => number;
  /** The d > 0 that X/S exceeds with probability alpha in (0, 1); NaN outside the domain. */
  readonly critical: (alpha: number, df: number) => number;
}

/** What is known of X. */
export interface KnownSpread {
  /** P(X > w) for w > 0; falls from 1 to 0. Asked once for each w of the grid. */
  readonly exceeds: (w: number) => number;
  /** A first guess of a critical value; a good one saves time only. */
  readonly guess: (alpha: number, df: number) => number;
}

/** Coarsest step in ln w: the integrand is smooth in a strip of ±π/4 around the real line. */
const COARSEST = 0.08;

/** A step of this many standard deviations of ln S leaves an error below 1e-13 of the tail. */
const SHARE_OF_DEVIATION = 0.6;

/** Terms below this share of the sum no longer count. */
const NEGLIGIBLE = 1e-17;

/**
 * The distribution of X/S. The costly tail of X is worked out on one grid in ln w that every d and df share, so that
 * only the first answers take long; finer grids hold the coarser ones.
 *
 * Source: P(X/S > d) = ∫ P(X > e^v) g(v − ln d) dv, g being the density of ln S, by the trapezoidal rule, which converges
 * geometrically wherever its nodes begin: Trefethen & Weideman (2014), SIAM Review 56, 385–458. All terms are positive,
 * so that small tails keep their relative accuracy. Critical values by Newton's method; the slope is the same sum with
 * the derivative of g.
 */
export function studentized({ exceeds, guess }: KnownSpread): Studentized {
  const known = new Map<number, number>();
  const exceedsAt = (v: number): number => {
    const old = known.get(v);
    if (old !== undefined) return old;
    const answer = exceeds(Math.exp(v));
    known.set(v, answer);
    return answer;
  };
  const at = (d: number, df: number) =>
    df === Number.POSITIVE_INFINITY ? untouched(exceeds, d) : average(exceedsAt, d, df);
  return {
    tail: (d, df) => {
      if (Number.isNaN(d) || !(df > 0)) return Number.NaN;
      if (d <= 0 || d === Number.POSITIVE_INFINITY) return d <= 0 ? 1 : 0;
      return Math.min(1, at(d, df).area);
    },
    critical: (alpha, df) => {
      if (!(alpha > 0 && alpha < 1 && df > 0)) return Number.NaN;
      return solveInLogs({ area: alpha, rising: false }, guess(alpha, df), (d) => at(d, df));
    },
  };
}

/** With infinitely many df S is 1; the slope by a central difference. */
function untouched(exceeds: (w: number) => number, d: number): Area {
  const apart = 1e-5;
  return {
    area: exceeds(d),
    growth: (exceeds(d * Math.exp(apart)) - exceeds(d * Math.exp(-apart))) / (2 * apart),
  };
}

/** The tail at d and its slope in ln d, added up on both sides of S = 1 until the terms no longer count. */
function average(exceedsAt: (v: number) => number, d: number, df: number): Area {
  const a = df / 2;
  const step = stepFor(df);
  const center = Math.log(d);
  const middle = Math.round(center / step);
  let [area, growth] = [0, 0];
  const addFrom = (first: number, direction: number) => {
    let previous = 0;
    for (let node = first; ; node += direction) {
      const u = node * step - center;
      const excess = Math.expm1(2 * u);
      const weight = Math.exp(-a * (excess - 2 * u));
      if (weight === 0) return;
      const term = weight * exceedsAt(node * step);
      area += term;
      growth += 2 * a * excess * term;
      if (term <= previous && term < NEGLIGIBLE * area) return;
      previous = term;
    }
  };
  // the tail of X rises towards small w and may carry the bulk there; uphill first, "negligible" means what it says
  addFrom(middle, -1);
  addFrom(middle + 1, 1);
  const scale = 2 * Math.sqrt(a / (2 * Math.PI)) * Math.exp(-stirlingError(a)) * step;
  return { area: scale * area, growth: scale * growth };
}

/** Halves of the coarsest step, so that the nodes of a grid are among those of every finer one. */
function stepFor(df: number): number {
  const wanted = SHARE_OF_DEVIATION / Math.sqrt(2 * df);
  return COARSEST * 2 ** Math.min(0, Math.floor(Math.log2(wanted / COARSEST)));
}
