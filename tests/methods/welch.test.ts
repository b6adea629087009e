import { describe, expect, it } from "vitest";
import { welch } from "../../src/methods/welch";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import reference from "../reference/welch.json";
import { found } from "./found";
import { nearComparison } from "./nearComparison";
import { printed } from "./printed";
import { trialOf } from "./trialOf";

const compare = (usual: readonly number[], tried: readonly number[], confidence = 0.95) =>
  welch(summary(usual), summary(tried), confidence);

describe("welch agrees with R's t.test()", () => {
  const cases = reference.cases.filter(({ method }) => method === "welch");
  it.each(cases)("$trial at $confidence", (known) => {
    const { usual, tried } = trialOf(known.trial);
    // averages computed from seven-digit data a million from zero agree to their own rounding only
    const tolerance = known.trial === "offset" ? { relative: 1e-9 } : { relative: 1e-10, absolute: 1e-15 };
    nearComparison(found(compare(usual, tried, known.confidence)), known, tolerance);
  });
});

describe("welch agrees with printed figures", () => {
  it("Student's sleep data, usual less new as printed (R's help page of t.test)", () => {
    const { usual, tried } = trialOf("sleep");
    const { t, df, pValue, low, high } = found(compare(tried, usual));
    printed("t", t, "-1.8608");
    printed("df", df, "17.776");
    printed("p-value", pValue, "0.07939");
    printed("low", low, "-3.3654832");
    printed("high", high, "0.2054832");
  });

  it("Darwin's maize, wrongly taken as separate plants (R)", () => {
    const { usual, tried } = trialOf("darwin");
    const { t, df, pValue } = found(compare(usual, tried));
    printed("t", t, "2.437");
    printed("df", df, "22.16");
    printed("p-value", pValue, "0.0233");
  });

  it("the boys' shoes, wrongly taken as separate (R)", () => {
    const { usual, tried } = trialOf("shoes");
    printed("p-value", found(compare(usual, tried)).pValue, "0.7165");
  });

  it("two and three plants each (R's t.test)", () => {
    const two = found(compare([3, 5], [10, 14]));
    printed("t", two.t, "3.5777");
    printed("df", two.df, "1.4706");
    printed("p-value", two.pValue, "0.1078");
    const three = found(compare([12, 15, 11], [18, 21, 19]));
    printed("t", three.t, "4.4721");
    printed("df", three.df, "3.6697");
    printed("p-value", three.pValue, "0.01343");
  });
});

describe("welch keeps its shape", () => {
  const [usual, tried] = [
    [4.2, 5.1, 6.3, 5.5],
    [6.1, 7.7, 6.9],
  ];

  it("swapping the groups turns the difference and its range and keeps the p-value", () => {
    const [there, back] = [found(compare(usual, tried)), found(compare(tried, usual))];
    expect(back.difference).toBe(-there.difference);
    expect([back.low, back.high]).toEqual([-there.high, -there.low]);
    expect(back.pValue).toBe(there.pValue);
  });

  it("another unit scales lengths only; a shift changes nothing but the averages", () => {
    const plain = found(compare(usual, tried));
    const grams = found(
      compare(
        usual.map((kilos) => 1024 * kilos),
        tried.map((kilos) => 1024 * kilos),
      ),
    );
    expect(grams).toEqual({
      ...plain,
      difference: 1024 * plain.difference,
      low: 1024 * plain.low,
      high: 1024 * plain.high,
      standardError: 1024 * plain.standardError,
    });
    const shifted = found(
      compare(
        usual.map((value) => value + 8),
        tried.map((value) => value + 8),
      ),
    );
    nearComparison(shifted, plain, { relative: 1e-12 });
  });

  it("the range excludes 0 exactly when p is below 1 − confidence, just either side of it", () => {
    const { pValue } = found(compare(usual, tried));
    expect(found(compare(usual, tried, 1 - pValue * 1.001)).low).toBeGreaterThan(0);
    expect(found(compare(usual, tried, 1 - pValue / 1.001)).low).toBeLessThan(0);
  });
});

describe("welch says why there are no figures", () => {
  it("one plant in a group", () => {
    expect(compare([5], [1, 2])).toEqual({ absent: "one-plant" });
    expect(compare([1, 2], [5])).toEqual({ absent: "one-plant" });
  });

  it("no plant varies, rounding noise aside", () => {
    expect(compare([4, 4, 4], [5, 5])).toEqual({ absent: "all-equal" });
    expect(compare([0, 0], [0, 0])).toEqual({ absent: "all-equal" });
    expect(compare([0.3, 0.3], [0.1 + 0.2, 0.3, 0.3])).toEqual({ absent: "all-equal" });
  });

  it("but one group that varies is enough", () => {
    near("df", found(compare([4, 4, 4], [5, 6, 5, 7])).df, 3);
  });
});
