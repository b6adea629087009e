/**
 * How many choices of `size` of the values have a sum at least as far from 0 as the bar, either way.
 *
 * Meeting in the middle: the sums of all choices of either half are sorted by how many they choose, so that 12 of 24 cost
 * two times 4 096 sums rather than 2 704 156.
 *
 * @param size whole, from 1 to the number of values
 * @param bar at 0 or below every choice counts
 *
 * Source: Horowitz & Sahni (1974), Journal of the ACM 21, 277–292.
 */
export function splitsBeyond(values: readonly number[], size: number, bar: number): number {
  const middle = Math.floor(values.length / 2);
  const [left, right] = [sumsBySize(values.slice(0, middle), size), sumsBySize(values.slice(middle), size)];
  return left.reduce((hits, sums, chosen) => hits + pairsBeyond(sums, right[size - chosen] as Float64Array, bar), 0);
}

/** How many choices of signs of the values have such a sum; as splitsBeyond. */
export function flipsBeyond(values: readonly number[], bar: number): number {
  const middle = Math.floor(values.length / 2);
  return pairsBeyond(flipSums(values.slice(0, middle)), flipSums(values.slice(middle)), bar);
}

/**
 * Rising sums of every choice of so many at most, by how many are chosen; none where there are not so many values. Each
 * is built up from nothing, so that rounding stays small. With 2 plants against 60 the choices that hold more would be
 * past counting.
 */
function sumsBySize(values: readonly number[], most: number): readonly Float64Array[] {
  const bySize = Array.from({ length: most + 1 }, (): number[] => []);
  const choose = (from: number, chosen: number, sum: number) => {
    (bySize[chosen] as number[]).push(sum);
    if (chosen === most) return;
    for (let i = from; i < values.length; i += 1) choose(i + 1, chosen + 1, sum + (values[i] as number));
  };
  choose(0, 0, 0);
  return bySize.map((sums) => Float64Array.from(sums).sort());
}

function flipSums(values: readonly number[]): Float64Array {
  const sums = values.reduce((before, value) => before.flatMap((sum) => [sum + value, sum - value]), [0]);
  return Float64Array.from(sums).sort();
}

/** Pairs of one of each whose sum is at least as far from 0 as the bar; both lists rise. */
function pairsBeyond(left: Float64Array, right: Float64Array, bar: number): number {
  if (!(bar > 0)) return left.length * right.length;
  let hits = 0;
  let above = right.length;
  let below = right.length;
  for (const sum of left) {
    while (above > 0 && sum + (right[above - 1] as number) >= bar) above -= 1;
    while (below > 0 && sum + (right[below - 1] as number) > -bar) below -= 1;
    hits += right.length - above + below;
  }
  return hits;
}
