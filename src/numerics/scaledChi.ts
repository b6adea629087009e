import { stirlingError } from "./saddlePoint";

/** Widest useful step in ln s: the integrand is smooth in a strip of ±π/4 around the real line. */
const WIDEST_STEP = 0.09;

/** Terms below this share of the sum no longer count. */
const NEGLIGIBLE = 1e-18;

/**
 * The average of f(S), where S is an estimated standard deviation divided by the true one (χ/√df).
 *
 * @param f positive and monotone; where it falls steeply in ln s (as at a large non-centrality), say so by finest
 * @param df above 0; Infinity means S = 1
 * @param finest upper limit of the step in ln s
 *
 * Source: trapezoidal rule in ln s, which converges geometrically: Trefethen & Weideman (2014), SIAM Review 56, 385–458.
 * All terms are positive, so that small averages keep their relative accuracy.
 */
export function scaledChiAverage(f: (s: number) => number, df: number, finest = WIDEST_STEP): number {
  if (df === Number.POSITIVE_INFINITY) return f(1);
  const a = df / 2;
  const step = Math.min(WIDEST_STEP, finest, 0.5 / Math.sqrt(2 * df));
  const weight = (u: number) => Math.exp(-a * (Math.expm1(2 * u) - 2 * u));
  const term = (u: number) => weight(u) * f(Math.exp(u));

  // f may carry the bulk far to either side of 0; walking uphill first makes "negligible" mean what it says
  const uphill = f(Math.exp(step)) > f(1) ? step : -step;
  const path: Path = { term, exhausted: (u) => weight(u) === 0 };
  const half = walk(path, uphill, f(1));
  const sum = walk(path, -uphill, half);
  return 2 * Math.sqrt(a / (2 * Math.PI)) * Math.exp(-stirlingError(a)) * step * sum;
}

interface Path {
  /** Terms rise to one peak and fall. */
  readonly term: (u: number) => number;
  /** Whether nothing can follow from here on. */
  readonly exhausted: (u: number) => boolean;
}

/** Adds terms at step, 2·step … to the sum until they no longer count. */
function walk({ term, exhausted }: Path, step: number, start: number): number {
  let sum = start;
  let previous = start;
  for (let u = step; !exhausted(u); u += step) {
    const next = term(u);
    sum += next;
    if (next <= previous && next < NEGLIGIBLE * sum) break;
    previous = next;
  }
  return sum;
}
