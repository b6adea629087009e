/** An area under a density, seen at v > 0. */
export interface Area {
  readonly area: number;
  /** How the area changes with ln v: v times the density, negative for an upper tail. */
  readonly growth: number;
  /** How ln |growth| changes with ln v, where that is known: it saves the last step. */
  readonly bend?: number;
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
 * The v > 0 at which an area takes a wanted value, to the last digits, by Newton's method on ln area against ln v, or
 * by Halley's where the bend is known.
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
    const seen = at(v);
    const upward = seen.area < wanted.area === wanted.rising;
    if (upward) low = v;
    else high = v;

    const { step, isLast } = stepTo(wanted.area, seen, upward);
    const next = v * Math.exp(step);
    if (isLast || next === 0 || next === Number.POSITIVE_INFINITY) return next;
    v = next > low && next < high ? next : Math.sqrt(low) * Math.sqrt(high);
  }
  return v;
}

/** A step in ln v, and whether what it leaves is below the last digit. */
function stepTo(wanted: number, { area, growth, bend }: Area, upward: boolean) {
  const straight = newtonStep(Math.log(wanted / area) * area, growth, upward);
  if (bend === undefined) return { step: straight, isLast: Math.abs(straight) <= 1e-10 };
  const slope = growth / area;
  const turn = straight * (bend - slope);
  // Halley's step leaves the cube of a step, as measured in what the slope changes over
  const narrow = Math.max(1, Math.abs(bend), Math.abs(slope));
  const isLast = Math.abs(straight) * (straight * narrow) ** 2 <= 1e-17;
  return { step: Math.abs(turn) < 1 ? straight / (1 + turn / 2) : straight, isLast };
}

/** In ln v. Where the area is flat or has vanished, a plain step in the right direction. */
function newtonStep(missing: number, growth: number, upward: boolean): number {
  const step = missing / growth;
  if (!Number.isFinite(step) || growth === 0) return upward ? LONGEST : -LONGEST;
  return Math.max(-LONGEST, Math.min(LONGEST, step));
}
