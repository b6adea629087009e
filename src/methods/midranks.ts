/** Amounts closer than this share of the largest are the same but for rounding, as from converted units. */
const ROUNDING = 1e-12;

/** Ranks of a sample. */
export interface Midranks {
  /** One per value, the smallest from 1; equal values share the middle of their ranks. */
  readonly ranks: readonly number[];
  /** Σ(t³ − t) over the groups of t equal values; 0 without ties. */
  readonly tieSum: number;
}

/**
 * Ranks finite numbers.
 *
 * @param noise neighbours no farther apart than this count as equal; see roundingOf
 */
export function midranks(values: readonly number[], noise: number): Midranks {
  const order = [...values.keys()].sort((i, j) => at(values, i) - at(values, j));
  const ranks = new Array<number>(values.length).fill(0);
  let tieSum = 0;
  for (let first = 0, next = 0; first < order.length; first = next) {
    next = first + 1;
    while (next < order.length && at(values, at(order, next)) - at(values, at(order, next - 1)) <= noise) next += 1;
    for (const place of order.slice(first, next)) ranks[place] = (first + 1 + next) / 2;
    tieSum += (next - first) ** 3 - (next - first);
  }
  return { ranks, tieSum };
}

/** How far apart amounts of this size, or differences of two of them, may be through rounding alone. */
export function roundingOf(amounts: readonly number[]): number {
  return ROUNDING * amounts.reduce((largest, amount) => Math.max(largest, Math.abs(amount)), 0);
}

function at(values: readonly number[], index: number): number {
  return values[index] ?? Number.NaN;
}
