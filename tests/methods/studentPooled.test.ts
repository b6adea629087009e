import { describe, expect, it } from "vitest";
import { pooledVariance, studentPooled } from "../../src/methods/studentPooled";
import { summary } from "../../src/numerics/moments";
import reference from "../reference/welch.json";
import { found } from "./found";
import { nearComparison } from "./nearComparison";
import { printed } from "./printed";
import { trialOf } from "./trialOf";

const compare = (usual: readonly number[], tried: readonly number[], confidence = 0.95) =>
  studentPooled(summary(usual), summary(tried), confidence);

describe("studentPooled agrees with R's t.test(var.equal = TRUE)", () => {
  const cases = reference.cases.filter(({ method }) => method === "pooled");
  it.each(cases)("$trial at $confidence", (known) => {
    const { usual, tried } = trialOf(known.trial);
    const tolerance = known.trial === "offset" ? { relative: 1e-9 } : { relative: 1e-10, absolute: 1e-15 };
    nearComparison(found(compare(usual, tried, known.confidence)), known, tolerance);
  });
});

describe("studentPooled agrees with printed figures", () => {
  it("five plots against five, from averages and variances (worked table, Scientific Research Publishing)", () => {
    const [usual, tried] = [0.24, 0.54].map((mean) => ({ n: 5, mean, variance: 0.003 }));
    if (usual === undefined || tried === undefined) throw new Error("two groups");
    const { t, df, pValue, high, difference, standardError } = found(studentPooled(usual, tried, 0.95));
    printed("t", t, "8.660254");
    expect(df).toBe(8);
    printed("p-value × 1e5", pValue * 1e5, "2.45684");
    printed("critical t", (high - difference) / standardError, "2.306004");
  });

  it("Student's sleep data (R)", () => {
    const { usual, tried } = trialOf("sleep");
    const { df, pValue } = found(compare(usual, tried));
    expect(df).toBe(18);
    printed("p-value", pValue, "0.07919");
  });

  it("eleven plants of Box, Hunter & Hunter (R)", () => {
    const { difference, t, df, pValue } = found(
      compare([29.9, 11.4, 25.3, 16.5, 21.1], [26.6, 23.7, 28.5, 14.2, 17.9, 24.3]),
    );
    printed("difference", difference, "1.6933");
    printed("t", t, "0.4437");
    expect(df).toBe(9);
    printed("p-value", pValue, "0.66775");
  });
});

it("studentPooled says why there are no figures", () => {
  expect(compare([5], [1, 2])).toEqual({ absent: "one-plant" });
  expect(compare([1, 2], [5])).toEqual({ absent: "one-plant" });
  expect(compare([4, 4], [5, 5])).toEqual({ absent: "all-equal" });
});

it("pooledVariance weighs by n − 1, and passes over a treatment of one plant", () => {
  const groups = [[1, 3], [5], [2, 4, 9]].map(summary);
  expect(pooledVariance(groups)).toBe((2 + 26) / 3);
  expect(pooledVariance([summary([7])])).toBeNaN();
});
