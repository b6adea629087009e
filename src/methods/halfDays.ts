import type { DatedPicks, Picks } from "./picks";

/** Sums of decimals end in rounding noise, which must not move half a harvest to the next pick. */
const NOISE = 1e-12;

/**
 * The first day by which half of each owner's harvest was in. Picks without a known day do not count.
 *
 * @returns one day an owner, NaN for one without harvest
 */
export function halfDays(picks: Picks, ownerCount: number): Float64Array {
  const { owners, amounts, days } = picks;
  const halves = new Float64Array(ownerCount).fill(Number.NaN);
  if (days === null) return halves;
  const rows = Array.from({ length: ownerCount }, (): number[] => []);
  for (const [row, owner] of owners.entries()) {
    if ((amounts[row] ?? 0) > 0 && !Number.isNaN(days[row] ?? Number.NaN)) rows[owner]?.push(row);
  }
  for (const [owner, own] of rows.entries()) {
    own.sort((one, other) => (days[one] ?? 0) - (days[other] ?? 0));
    halves[owner] = halfOf({ owners, amounts, days }, own);
  }
  return halves;
}

function halfOf({ amounts, days }: DatedPicks, inOrder: readonly number[]): number {
  const total = inOrder.reduce((sum, row) => sum + (amounts[row] ?? 0), 0);
  let sum = 0;
  for (const row of inOrder) {
    sum += amounts[row] ?? 0;
    if (2 * sum >= total * (1 - NOISE)) return days[row] ?? Number.NaN;
  }
  return Number.NaN;
}
