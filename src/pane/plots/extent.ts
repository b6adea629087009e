/**
 * The lowest and the highest of some figures; Infinity and −Infinity for none. Math.min and Math.max take no more figures
 * at once than the browser's stack holds.
 */
export function extent(values: readonly number[]): readonly [low: number, high: number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}
