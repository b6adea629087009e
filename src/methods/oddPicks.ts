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
  const [middle, middleEach] = [middleOf(amounts), each === null ? 0 : middleOf(each)];
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
  return middle > 0 && share > 0 && (share >= TIMES_PER_FRUIT * middle || TIMES_PER_FRUIT * share <= middle);
}

/** The middle of the amounts above 0; 0 when there is none. */
function middleOf(amounts: Float64Array): number {
  const sorted = amounts.filter((amount) => amount > 0).sort();
  const half = sorted.length / 2;
  return sorted.length === 0 ? 0 : ((sorted[Math.floor(half)] ?? 0) + (sorted[Math.ceil(half) - 1] ?? 0)) / 2;
}

/** So many picks must have both, before they tell whether one counts the other. */
const FEWEST = 8;
/** Dividing must take away at least a fifth of the variance. */
const EVENER = 0.8;

/**
 * Whether one column counts the fruit of another: whole numbers, none below zero, smaller than the amounts where those
 * are whole as well, and the amounts differ less per fruit than a pick (variance of logarithms). Our own rule, as no
 * source rules it: a bed's number is no count.
 */
export function countsFruit(counts: Float64Array, amounts: Float64Array): boolean {
  if (!areCounts(counts) || (areCounts(amounts) && middleOf(counts) >= middleOf(amounts))) return false;
  const both = [...counts.keys()].filter((at) => (counts[at] ?? 0) > 0 && (amounts[at] ?? 0) > 0);
  if (both.length < FEWEST) return false;
  const logs = both.map((at) => Math.log(amounts[at] ?? 1));
  const perFruit = both.map((at, index) => (logs[index] ?? 0) - Math.log(counts[at] ?? 1));
  return variance(perFruit) < EVENER * variance(logs);
}

function areCounts(values: Float64Array): boolean {
  return values.every((value) => Number.isNaN(value) || (value >= 0 && Number.isInteger(value)));
}

function variance(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
}
