import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deviation, mean, summary, variance } from "../../src/numerics/moments";
import { near } from "../near";
import reference from "../reference/moments.json";

describe("agrees with R's mean() and var()", () => {
  it.each(reference.cases)("$name", (known) => {
    near("mean", mean(known.x), known.mean, { relative: 1e-15 });
    near("variance", variance(known.x), known.variance, { relative: 1e-13 });
  });
});

/** NIST StRD univariate sets that are made by rule: one middle value, then 500 pairs below and above it. */
function alternating(middle: number, below: number, above: number): number[] {
  return [middle, ...Array.from({ length: 1000 }, (_, index) => (index % 2 === 0 ? below : above))];
}

// Certified values of the NIST Statistical Reference Datasets. The decimal data of NumAcc3 and NumAcc4 do not fit
// doubles: the deviation of the doubles themselves differs from the certified one in the 10th and 9th digit.
describe("NIST StRD, certified mean and standard deviation", () => {
  it.each([
    { name: "NumAcc1", x: [10000001, 10000003, 10000002], center: 10000002, spread: 1, relative: 1e-15 },
    { name: "NumAcc2", x: alternating(1.2, 1.1, 1.3), center: 1.2, spread: 0.1, relative: 1e-14 },
    {
      name: "NumAcc3",
      x: alternating(1000000.2, 1000000.1, 1000000.3),
      center: 1000000.2,
      spread: 0.1,
      relative: 10 ** -9.4,
    },
    {
      name: "NumAcc4",
      x: alternating(10000000.2, 10000000.1, 10000000.3),
      center: 10000000.2,
      spread: 0.1,
      relative: 10 ** -8.2,
    },
  ])("$name", ({ x, center, spread, relative }) => {
    near("mean", mean(x), center, { relative: 1e-14 });
    near("deviation", deviation(x), spread, { relative });
  });

  it("Michelso", () => {
    const { x } = reference.cases[0] ?? { x: [] };
    near("mean", mean(x), 299.8524, { relative: 1e-15 });
    near("deviation", deviation(x), 0.0790105478190518, { relative: 1e-13 });
  });
});

describe("laws of mean and variance", () => {
  const sample = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 40 });

  it("a shift moves the mean and leaves the variance, digit for digit", () => {
    fc.assert(
      fc.property(sample, (x) => {
        const far = x.map((value) => value + 2 ** 40);
        near("mean", mean(far) - 2 ** 40, mean(x), { relative: 0, absolute: 2 ** -11 });
        near("variance", variance(far), variance(x), { relative: 1e-7, absolute: 1e-7 });
      }),
    );
  });

  it("a scale by a power of two scales both exactly", () => {
    fc.assert(
      fc.property(sample, (x) => {
        const wide = x.map((value) => value * 8);
        expect(mean(wide)).toBe(8 * mean(x));
        expect(variance(wide)).toBe(64 * variance(x));
      }),
    );
  });
});

describe("hard cases", () => {
  it("no value has no mean; one value has no variance", () => {
    expect(mean([])).toBeNaN();
    expect(variance([])).toBeNaN();
    expect(variance([5])).toBeNaN();
    expect(summary([5])).toEqual({ n: 1, mean: 5, variance: Number.NaN });
  });

  it("equal values have a variance of exactly 0", () => {
    expect(variance([0.1, 0.1, 0.1])).toBe(0);
    expect(mean([0.1, 0.1, 0.1])).toBe(0.1);
  });

  it("−0, NaN, huge and tiny values", () => {
    expect(Math.abs(mean([-0, -0]))).toBe(0);
    expect(mean([1, Number.NaN])).toBeNaN();
    expect(mean([1e308, 1e308])).toBe(1e308);
    near("tiny", deviation([1e-150, 3e-150]), Math.SQRT2 * 1e-150, { relative: 1e-14 });
  });
});
