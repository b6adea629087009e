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
  const [all, late] = [new Float64Array(groups), new Float64Array(groups)];
  for (let row = 0; row < owners.length; row++) {
    const group = groupOf[owners[row] ?? -1] ?? -1;
    const [amount, day] = [amounts[row] ?? Number.NaN, days?.[row] ?? Number.NaN];
    if (group < 0 || !(amount > 0) || Number.isNaN(day)) continue;
    all[group] = (all[group] ?? 0) + amount;
    if (day > from) late[group] = (late[group] ?? 0) + amount;
  }
  return Array.from(all, (total, group) => (total > 0 ? (late[group] ?? 0) / total : Number.NaN));
}

function lastDay({ owners, amounts, days }: Picks): number {
  let last = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < owners.length; row++) {
    const day = days?.[row] ?? Number.NaN;
    if ((owners[row] ?? -1) >= 0 && (amounts[row] ?? 0) > 0 && day > last) last = day;
  }
  return last;
}
