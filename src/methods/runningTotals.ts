import type { Picks } from "./picks";

/** The steps of a running harvest: every so many days from the first day on, and the last day. */
export function stepDays(first: number, last: number, every: number): readonly number[] {
  const whole = Math.floor((last - first) / every);
  const steps = Array.from({ length: whole + 1 }, (_, step) => first + step * every);
  return first + whole * every < last ? [...steps, last] : steps;
}

/**
 * What each owner's picks come to by each step, the step's day among them. Picks without a known day do not count.
 *
 * @param steps rising days; picks after the last are left out
 * @returns one row of running sums an owner
 */
export function runningTotals(
  picks: Picks,
  ownerCount: number,
  steps: readonly number[],
): readonly (readonly number[])[] {
  const { owners, amounts, days } = picks;
  const sums = Array.from({ length: ownerCount }, () => steps.map(() => 0));
  for (const [row, owner] of owners.entries()) {
    const [amount, day] = [amounts[row] ?? Number.NaN, days?.[row] ?? Number.NaN];
    const step = steps.findIndex((end) => day <= end);
    const own = sums[owner];
    if (own !== undefined && step >= 0 && !Number.isNaN(amount)) own[step] = (own[step] ?? 0) + amount;
  }
  return sums.map(runningSum);
}

function runningSum(parts: readonly number[]): readonly number[] {
  let sum = 0;
  return parts.map((part) => {
    sum += part;
    return sum;
  });
}
