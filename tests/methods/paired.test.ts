import { describe, expect, it } from "vitest";
import { differences } from "../../src/methods/differences";
import { meanComparison } from "../../src/methods/meanComparison";
import { paired } from "../../src/methods/paired";
import { near } from "../near";
import reference from "../reference/welch.json";
import { found } from "./found";
import { nearComparison } from "./nearComparison";
import { printed } from "./printed";
import { trialOf } from "./trialOf";

describe("paired agrees with R's t.test(paired = TRUE)", () => {
  const cases = reference.cases.filter(({ method }) => method === "paired");
  it.each(cases)("$trial at $confidence", (known) => {
    const { usual, tried } = trialOf(known.trial);
    const tolerance = known.trial === "offset" ? { relative: 1e-9 } : { relative: 1e-10, absolute: 1e-15 };
    nearComparison(found(paired(usual, tried, known.confidence)), known, tolerance);
  });
});

describe("paired agrees with printed figures", () => {
  it("Student's sleep data, usual less new as printed (R for Dummies)", () => {
    const { usual, tried } = trialOf("sleep");
    const { t, df, pValue, low, high, difference } = found(paired(tried, usual, 0.95));
    printed("t", t, "-4.0621");
    expect(df).toBe(9);
    printed("p-value", pValue, "0.002833");
    printed("low", low, "-2.4598858");
    printed("high", high, "-0.7001142");
    printed("difference", difference, "-1.58");
  });

  it("Darwin's maize in inches (agridat's help page)", () => {
    const { usual, tried } = trialOf("darwin");
    const eighths = differences(usual, tried).map((inches) => 8 * inches);
    expect(eighths).toEqual([49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48]);
    const { difference, t, df, pValue, low, high } = found(paired(usual, tried, 0.95));
    printed("difference", difference, "2.6167");
    printed("t", t, "2.148");
    expect(df).toBe(14);
    printed("p-value", pValue, "0.0497");
    printed("low", low, "0.003899");
    printed("high", high, "5.229434");
  });

  it("the boys' shoes (Box, Hunter & Hunter; R)", () => {
    const { usual, tried } = trialOf("shoes");
    const { t, df, pValue, low, high } = found(paired(usual, tried, 0.95));
    printed("t", t, "3.3489");
    expect(df).toBe(9);
    printed("p-value", pValue, "0.008539");
    printed("low", low, "0.1330");
    printed("high", high, "0.6870");
  });
});

describe("the t test behind it, from printed summaries", () => {
  it("ten plots, average difference 0.34, deviation 0.83 (worked example)", () => {
    const { t, pValue } = meanComparison({ difference: 0.34, standardError: 0.83 / Math.sqrt(10), df: 9 }, 0.95);
    printed("t", t, "1.295");
    printed("one-sided p", pValue / 2, "0.1137");
  });

  it("on-farm maize, 6.15 against 4.1, df 2 (extension handbook)", () => {
    const wide = meanComparison({ difference: 6.15 - 4.1, standardError: 0.4924, df: 2 }, 0.95);
    const narrow = meanComparison({ difference: 6.15 - 4.1, standardError: 0.4924, df: 2 }, 0.9);
    // the standard error is printed with four digits only, so t holds to as many
    near("t", wide.t, 4.1629, { relative: 2e-4 });
    near("p-value", wide.pValue, 0.0531, { absolute: 5e-5 });
    printed("critical t at 5 %", (wide.high - wide.difference) / 0.4924, "4.303");
    printed("critical t at 10 %", (narrow.high - narrow.difference) / 0.4924, "2.920");
    expect(wide.low).toBeLessThan(0);
  });

  it("half a range of 2 wants 14 values of deviation 3.4 (R: 2.055 with 13, 1.963 with 14)", () => {
    const half = (n: number) =>
      meanComparison({ difference: 0, standardError: 3.4 / Math.sqrt(n), df: n - 1 }, 0.95).high;
    printed("13 values", half(13), "2.055");
    printed("14 values", half(14), "1.963");
  });
});

describe("paired keeps its shape and says why there are no figures", () => {
  it("swapping turns the difference and keeps the p-value; a shift of both changes nothing", () => {
    const [usual, tried] = [
      [4, 5, 7, 6],
      [6, 5, 9, 9],
    ] as const;
    const [there, back] = [found(paired(usual, tried, 0.95)), found(paired(tried, usual, 0.95))];
    expect(back).toMatchObject({ difference: -there.difference, low: -there.high, high: -there.low });
    expect(back.pValue).toBe(there.pValue);
    expect(
      found(
        paired(
          usual.map((v) => v + 16),
          tried.map((v) => v + 16),
          0.95,
        ),
      ),
    ).toEqual(there);
  });

  it("fewer than two pairs; all differences equal, rounding noise aside", () => {
    expect(paired([1], [2], 0.95)).toEqual({ absent: "one-plant" });
    expect(paired([0.1, 0.2, 0.7], [0.4, 0.5, 1], 0.95)).toEqual({ absent: "all-equal" });
    expect(paired([2, 3], [2, 3], 0.95)).toEqual({ absent: "all-equal" });
  });

  it("throws for groups of unequal size, a programmer's mistake", () => {
    expect(() => differences([1, 2], [1])).toThrow(RangeError);
  });
});
