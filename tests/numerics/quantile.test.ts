import { describe, expect, it } from "vitest";
import { quantile } from "../../src/numerics/quantile";
import { near } from "../near";
import reference from "../reference/moments.json";

describe("agrees with R's quantile(), type 7", () => {
  it.each(reference.cases)("$name", ({ x, p, quantiles }) => {
    for (const [index, share] of p.entries()) {
      near(`${share}`, quantile(x, share), quantiles[index] ?? Number.NaN, { relative: 1e-15 });
    }
  });
});

describe("hard cases", () => {
  it("leaves the sample as it was", () => {
    const x = [3, 1, 2];
    expect(quantile(x, 0.5)).toBe(2);
    expect(x).toEqual([3, 1, 2]);
  });

  it("one value is every quantile, none has none", () => {
    expect(quantile([7], 0.3)).toBe(7);
    expect(quantile([], 0.5)).toBeNaN();
  });

  it("numbers are ordered as numbers, not as text", () => {
    expect(quantile([10, 9, 1], 1)).toBe(10);
  });

  it.each([-0.01, 1.01, Number.NaN])("no answer for p = %d", (p) => {
    expect(quantile([1, 2, 3], p)).toBeNaN();
    expect(quantile([7], p)).toBeNaN();
  });

  it("a NaN among the values leaves no answer", () => {
    expect(quantile([1, Number.NaN, 3], 0.5)).toBeNaN();
  });
});
