import { describe, expect, it } from "vitest";
import { pooledUnevenness, unevenness, unevennessLimits } from "../../src/methods/unevenness";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import reference from "../reference/unevenness.json";
import { figure } from "./found";
import { printed } from "./printed";

describe("unevenness agrees with R: sd(), mean() and qchisq() over open data", () => {
  it.each(reference.cases.pooled)("$name", (known) => {
    const groups = known.groups.map(summary);
    const pooled = pooledUnevenness(groups);
    expect(pooled.df).toBe(known.df);
    near("pooled", figure(pooled.unevenness), known.unevenness, { relative: 1e-13 });
    near("low", figure(unevennessLimits(pooled).low), known.low, { relative: 1e-12 });
    near("high", figure(unevennessLimits(pooled).high), known.high, { relative: 1e-12 });
    for (const [i, group] of groups.entries()) {
      const own = { unevenness: unevenness(group), df: group.n - 1 };
      near("own", figure(own.unevenness), known.own[i] ?? Number.NaN, { relative: 1e-13 });
      near("own low", figure(unevennessLimits(own).low), known.ownLow[i] ?? Number.NaN, { relative: 1e-12 });
      near("own high", figure(unevennessLimits(own).high), known.ownHigh[i] ?? Number.NaN, { relative: 1e-12 });
    }
  });
});

it("averages and variances of a printed 4 × 5 crop table", () => {
  // four varieties in five beds; averages and variances as the table shows them
  const rows = [
    [32, 34, 33, 35, 37],
    [34, 33, 36, 37, 35],
    [31, 34, 35, 32, 36],
    [29, 26, 30, 28, 29],
  ];
  const shown = [
    ["34.2", "3.7"],
    ["35.0", "2.5"],
    ["33.6", "4.3"],
    ["28.4", "2.3"],
  ] as const;
  for (const [i, row] of rows.entries()) {
    const { mean, variance } = summary(row);
    printed("average", mean, shown[i]?.[0] ?? "");
    printed("variance", variance, shown[i]?.[1] ?? "");
    near("unevenness", figure(unevenness(summary(row))), Math.sqrt(Number(shown[i]?.[1])) / Number(shown[i]?.[0]));
  }
});

describe("unevenness says why there is none", () => {
  it.each([
    [[], "no-usable-plants"],
    [[3], "one-plant-only"],
    [[0, 0], "average-zero"],
    [[-1, -2], "average-below-zero"],
  ])("%j: %s", (values, absent) => {
    expect(unevenness(summary(values))).toEqual({ absent });
    expect(unevennessLimits({ unevenness: unevenness(summary(values)), df: 1 })).toEqual({
      low: { absent },
      high: { absent },
    });
    expect(pooledUnevenness([summary(values)])).toEqual({ unevenness: { absent }, df: 0 });
  });

  it("no treatments at all have no usable plants", () => {
    expect(pooledUnevenness([])).toEqual({ unevenness: { absent: "no-usable-plants" }, df: 0 });
  });

  it("a treatment without its own takes no part in the pooled one; equal plants have 0", () => {
    const pooled = pooledUnevenness([[3], [4, 6], [0, 0]].map(summary));
    expect(pooled).toEqual({ unevenness: unevenness(summary([4, 6])), df: 1 });
    expect(unevenness(summary([4, 4, 4]))).toBe(0);
    expect(unevennessLimits({ unevenness: 0, df: 2 })).toEqual({ low: 0, high: 0 });
  });
});
