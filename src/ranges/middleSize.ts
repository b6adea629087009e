/**
 * The middle of the sizes above 0, the upper one of two middles, signs aside; 0 when there is none.
 *
 * It picks the middle without sorting, as a season's log has a hundred thousand numbers.
 *
 * Source: C. A. R. Hoare (1961), "Algorithm 65: Find", Communications of the ACM 4, 321–322.
 */
export function middleSize(numbers: Float64Array): number {
  const sizes = new Float64Array(numbers.length);
  let count = 0;
  for (const number of numbers) {
    const size = Math.abs(number);
    if (size > 0) sizes[count++] = size;
  }
  return nthSmallest(sizes.subarray(0, count), Math.floor(count / 2));
}

/** Orders the numbers as far as needed, in place; 0 where there are none. */
function nthSmallest(numbers: Float64Array, nth: number): number {
  let [low, high] = [0, numbers.length - 1];
  while (low < high) {
    const [below, above] = partition(numbers, low, high);
    if (nth > below && nth < above) break;
    if (nth <= below) high = below;
    else low = above;
  }
  return numbers[nth] ?? 0;
}

/** Puts the smaller numbers of a stretch first; answers with the last of them and the first of the larger ones. */
function partition(numbers: Float64Array, low: number, high: number): readonly [number, number] {
  const pivot = numbers[(low + high) >> 1] ?? 0;
  let [left, right] = [low, high];
  while (left <= right) {
    while ((numbers[left] ?? 0) < pivot) left++;
    while ((numbers[right] ?? 0) > pivot) right--;
    if (left <= right) swap(numbers, left++, right--);
  }
  return [right, left];
}

function swap(numbers: Float64Array, one: number, other: number): void {
  const kept = numbers[one] ?? 0;
  numbers[one] = numbers[other] ?? 0;
  numbers[other] = kept;
}
