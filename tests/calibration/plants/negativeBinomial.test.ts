import { expect, it } from "vitest";
import reference from "../../reference/plantDraws.json";
import { negativeBinomialAt } from "./negativeBinomial";

it.each(reference.cases.counted)("of mean $mean, $unevenness uneven: jumps where R's pnbinom says", (one) => {
  const spread = { mean: one.mean, variance: (one.unevenness * one.mean) ** 2 };
  for (const [at, count] of one.counts.entries()) {
    const below = one.below[at] ?? Number.NaN;
    expect(negativeBinomialAt(below - 1e-11, spread)).toBe(count);
    expect(negativeBinomialAt(below + 1e-11, spread)).toBe(count + 1);
  }
});
