/**
 * Calls back with the sum of every choice of `size` of the values, each choice once. Sums are built up from nothing
 * for each choice, so that rounding does not pile up from one to the next.
 *
 * @param size whole, from 1 to the number of values
 */
export function forEachSplitSum(values: readonly number[], size: number, visit: (sum: number) => void): void {
  const choose = (from: number, wanted: number, sum: number) => {
    const last = values.length - wanted;
    for (let i = from; i <= last; i += 1) {
      const next = sum + (values[i] as number);
      if (wanted === 1) visit(next);
      else choose(i + 1, wanted - 1, next);
    }
  };
  choose(0, size, 0);
}

/** Calls back with the sum of the values under every choice of signs: 2ⁿ sums. */
export function forEachFlipSum(values: readonly number[], visit: (sum: number) => void): void {
  const flip = (i: number, sum: number) => {
    const value = values[i];
    if (value === undefined) return visit(sum);
    flip(i + 1, sum + value);
    flip(i + 1, sum - value);
  };
  flip(0, 0);
}
