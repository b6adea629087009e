import type { Picks } from "./picks";

/** The last week of a harvest. */
const WEEK = 7;

/**
 * The share of each group's harvest that came in the last seven days of the whole log, the last day among them. Picks
 * without a known day do not count.
 *
 * @param groupOf the group of each owner; −1 for none
 * @returns one fraction a group, NaN for one without harvest
 */
export function lastWeekShares(picks: Picks, groupOf: Int32Array, groups: number): readonly number[] {
  const { owners, amounts, days } = picks;
  const from = lastDay(picks) - WEEK;
  const sums = Array.from({ length: groups }, () => ({ all: 0, late: 0 }));
  for (const [row, owner] of owners.entries()) {
    const sum = sums[groupOf[owner] ?? -1];
    const [amount, day] = [amounts[row] ?? Number.NaN, days?.[row] ?? Number.NaN];
    if (sum === undefined || !(amount > 0) || Number.isNaN(day)) continue;
    sum.all += amount;
    if (day > from) sum.late += amount;
  }
  return sums.map(({ all, late }) => late / all);
}

function lastDay({ owners, amounts, days }: Picks): number {
  let last = Number.NEGATIVE_INFINITY;
  for (const [row, owner] of owners.entries()) {
    const day = days?.[row] ?? Number.NaN;
    if (owner >= 0 && (amounts[row] ?? 0) > 0 && day > last) last = day;
  }
  return last;
}
