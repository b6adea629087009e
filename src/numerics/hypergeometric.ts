/** Tables this much likelier than the one seen still count as "no likelier": the rule of R's fisher.test(). */
const SLACK = 1 + 1e-7;

/** A 2 × 2 table of counts, row by row: whole numbers, 0 or more. */
export type FourCounts = readonly [a: number, b: number, c: number, d: number];

/**
 * Fisher's exact test of a 2 × 2 table of counts, two-sided: the chance, margins given, of a table no likelier than
 * the one seen.
 *
 * @param table first row, then second row
 * @returns in (0, 1], 1 for an empty table; NaN for anything but counts
 *
 * Source: R. A. Fisher (1935); weights by the ratio of neighbouring hypergeometric terms, from the mode outward.
 */
export function fisherExactTwoSided(...table: FourCounts): number {
  const [a, b, c, d] = table;
  if (!table.every((count) => Number.isSafeInteger(count) && count >= 0)) return Number.NaN;
  const weights = hypergeometricWeights(a + b, c + d, a + c);
  const lowest = Math.max(0, a - d);
  const seen = weights[a - lowest] ?? Number.NaN;
  let all = 0;
  let noLikelier = 0;
  for (const weight of weights) {
    all += weight;
    if (weight <= seen * SLACK) noLikelier += weight;
  }
  return noLikelier / all;
}

/**
 * Relative chances of every possible count x of marked ones among those drawn, lowest x first; the likeliest weighs 1.
 *
 * @param marked and plain: how many of each there are; drawn: how many are taken
 */
function hypergeometricWeights(marked: number, plain: number, drawn: number): number[] {
  const lowest = Math.max(0, drawn - plain);
  const highest = Math.min(marked, drawn);
  const mode = Math.floor(((drawn + 1) * (marked + 1)) / (marked + plain + 2));
  const ratio = (x: number) => ((marked - x) * (drawn - x)) / ((x + 1) * (plain - drawn + x + 1));

  const above: number[] = [];
  for (let x = mode, weight = 1; x < highest; x += 1) {
    weight *= ratio(x);
    above.push(weight);
  }
  const below: number[] = [];
  for (let x = mode - 1, weight = 1; x >= lowest; x -= 1) {
    weight /= ratio(x);
    below.push(weight);
  }
  return [...below.reverse(), 1, ...above];
}
