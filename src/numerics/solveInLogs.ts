/** An area under a density, seen at v > 0. */
export interface Area {
  readonly area: number;
  /** How the area changes with ln v: v times the density, negative for an upper tail. */
  readonly growth: number;
}

/** The area looked for. */
export interface Wanted {
  /** Above 0. */
  readonly area: number;
  /** Whether the area grows with v (a lower tail). */
  readonly rising: boolean;
}

/** Newton's longest step in ln v: keeps a poor first guess from overflowing. */
const LONGEST = 40;

/**
 * The v > 0 at which an area takes a wanted value, to the last digits, by Newton's method on ln area against ln v.
 *
 * A step that leaves the bracket known so far is replaced by halving, so that any first guess will do; a good one
 * saves steps.
 *
 * @param start a first guess; anything not finite and above 0 counts as 1
 * @param at the area at v
 */
export function solveInLogs(wanted: Wanted, start: number, at: (v: number) => Area): number {
  let v = start > 0 && start < Number.POSITIVE_INFINITY ? start : 1;
  let [low, high] = [0, Number.POSITIVE_INFINITY];
  for (let round = 0; round < 200; round += 1) {
    const { area, growth } = at(v);
    const upward = area < wanted.area === wanted.rising;
    if (upward) low = v;
    else high = v;

    const step = newtonStep(Math.log(wanted.area / area) * area, growth, upward);
    const next = v * Math.exp(step);
    if (!(Math.abs(step) > 1e-10) || next === 0 || next === Number.POSITIVE_INFINITY) return next;
    v = next > low && next < high ? next : Math.sqrt(low) * Math.sqrt(high);
  }
  return v;
}

/** In ln v. Where the area is flat or has vanished, a plain step in the right direction. */
function newtonStep(missing: number, growth: number, upward: boolean): number {
  const step = missing / growth;
  if (!Number.isFinite(step) || growth === 0) return upward ? LONGEST : -LONGEST;
  return Math.max(-LONGEST, Math.min(LONGEST, step));
}
