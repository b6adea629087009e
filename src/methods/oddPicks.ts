import { middlePick } from "./middlePick";

/** Per fruit: this many times the middle, or its inverse, is odd. */
const TIMES_PER_FRUIT = 5;
/** Without counts a pick of many fruit is large, so more is asked; a small one tells nothing. */
const TIMES_ALONE = 8;

/**
 * Which picks are far from the rest (METHODS 8.11): per fruit five times the middle and more, or a fifth of it and
 * less; where no count is known, eight times the middle pick and more. Zeros are never odd.
 *
 * @param amounts one a pick; NaN where there is none
 * @param counts of fruit, one a pick; null where there are none. A pick without a count is judged alone
 * @returns indices, rising
 */
export function oddPicks(amounts: Float64Array, counts: Float64Array | null): readonly number[] {
  const each = counts === null ? null : amounts.map((amount, at) => amount / (counts[at] || Number.NaN));
  const [middle, middleEach] = [middlePick(amounts), each === null ? 0 : middlePick(each)];
  const odd: number[] = [];
  for (const [at, amount] of amounts.entries()) {
    const share = each?.[at] ?? Number.NaN;
    const alone = Number.isNaN(share);
    if (alone ? isFar(amount, middle) : isFarEach(share, middleEach)) odd.push(at);
  }
  return odd;
}

function isFar(amount: number, middle: number): boolean {
  return middle > 0 && amount >= TIMES_ALONE * middle;
}

function isFarEach(share: number, middle: number): boolean {
  return share > 0 && (share >= TIMES_PER_FRUIT * middle || TIMES_PER_FRUIT * share <= middle);
}
