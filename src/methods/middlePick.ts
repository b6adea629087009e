/** The middle of the amounts above 0, in their unit; 0 when there is none. NaN does not count. */
export function middlePick(amounts: Float64Array): number {
  const sorted = amounts.filter((amount) => amount > 0).sort();
  const half = sorted.length / 2;
  return ((sorted[Math.floor(half)] ?? 0) + (sorted[Math.ceil(half) - 1] ?? 0)) / 2;
}
