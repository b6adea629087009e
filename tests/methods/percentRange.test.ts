import { describe, expect, it } from "vitest";
import { compareMeans, type Layout } from "../../src/methods/compareMeans";
import { percentRange } from "../../src/methods/percentRange";
import { steadyRatio } from "../../src/methods/ratioCurve";
import type { Known } from "../../src/nouns/known";
import { near } from "../near";
import reference from "../reference/percentRange.json";
import { figure } from "./found";
import { printed } from "./printed";
import { trialOf } from "./trialOf";

const LAYOUTS: Readonly<Record<string, Layout>> = { separate: "separate", pooled: "equal unevenness", paired: "pairs" };
const compare = (layout: Layout, usual: readonly number[], tried: readonly number[], confidence = 0.95) =>
  compareMeans(usual, tried, { layout, confidence });

describe("percent ranges agree with R: roots of Fieller's quadratic, and uniroot() on Welch's test", () => {
  it.each(reference.cases)("$trial, $method at $confidence", (known) => {
    const { usual, tried } = trialOf(known.trial);
    const { changeRange } = compare(LAYOUTS[known.method] ?? "separate", usual, tried, known.confidence);
    nearLimit("low", changeRange.low, known.low, "no-lower-limit");
    nearLimit("high", changeRange.high, known.high, "no-upper-limit");
  });

  it("some of these have no limit", () => {
    expect(reference.cases.filter(({ low, high }) => low === null || high === null).length).toBeGreaterThan(10);
  });
});

function nearLimit(what: string, actual: Known, expected: number | null, absent: string): void {
  if (expected === null) expect(actual).toEqual({ absent });
  // a limit is a root r less 1: near no change only the digits of r are left
  else near(what, figure(actual) + 1, expected + 1, { relative: 1e-11 });
}

describe("percent ranges agree with printed figures (R)", () => {
  it.each([
    { name: "plantGrowth2", method: "separate", change: "9.8172", low: "0.0957", high: "20.9619" },
    { name: "plantGrowth1", method: "separate", change: "-7.3728", low: "-19.7450", high: "5.9645" },
    { name: "spraysDC", method: "separate", change: "136", low: "32.0905", high: "504.3450" },
    { name: "darwin", method: "paired", change: "14.8886", low: "0.0212", high: "31.2156" },
  ])("$name, $method", ({ name, method, change, low, high }) => {
    const { usual, tried } = trialOf(name);
    const found = compare(LAYOUTS[method] ?? "separate", usual, tried);
    printed("change", 100 * figure(found.change), change);
    printed("low", 100 * figure(found.changeRange.low), low);
    printed("high", 100 * figure(found.changeRange.high), high);
  });

  it("two plants each: no range, g 10.09", () => {
    const found = compare("separate", [3, 5], [10, 14]);
    expect(found.change).toBe(2);
    expect(found.changeRange).toEqual({ low: { absent: "no-lower-limit" }, high: { absent: "no-upper-limit" } });
    printed("g", found.g ?? Number.NaN, "10.09");
  });

  it("three plants each", () => {
    const { change, changeRange } = compare("separate", [12, 15, 11], [18, 21, 19]);
    printed("change", 100 * figure(change), "52.63");
    printed("low", 100 * figure(changeRange.low), "14.27");
    printed("high", 100 * figure(changeRange.high), "142.03");
  });

  it("counts with an unsure usual average: g .362885", () => {
    const { usual, tried } = trialOf("spraysDC");
    printed("g", compare("separate", usual, tried).g ?? Number.NaN, "0.362884781");
  });
});

describe("no change lies outside the range exactly when p < 1 − confidence", () => {
  it("within a rounding error of the border", () => {
    for (const layout of ["separate", "equal unevenness", "pairs"] as const) {
      const { usual, tried } = trialOf("plantGrowth2");
      const p = figure(compare(layout, usual, tried).pValue);
      for (const step of [-4, -2, -1, 0, 1, 2, 4]) {
        const confidence = 1 - p * (1 + step * Number.EPSILON);
        const { changeRange } = compare(layout, usual, tried, confidence);
        expect(figure(changeRange.low) > 0, `${layout} ${step}`).toBe(p < 1 - confidence);
      }
    }
  });
});

describe("percent ranges keep their shape", () => {
  const { usual, tried } = trialOf("skewed");

  it.each(["separate", "equal unevenness", "pairs"] as const)("another unit changes nothing: %s", (layout) => {
    const [before, after] = layout === "pairs" ? [usual, tried.slice(0, usual.length)] : [usual, tried];
    const grams = (kilos: readonly number[]) => kilos.map((value) => 1024 * value);
    const plain = compare(layout, before, after);
    expect(compare(layout, grams(before), grams(after)).changeRange).toEqual(plain.changeRange);
  });

  it.each(["separate", "equal unevenness", "pairs"] as const)(
    "swapping groups gives one over the ratios: %s",
    (layout) => {
      const [before, after] = [trialOf("farApart").usual, trialOf("farApart").tried];
      const there = compare(layout, before, after).changeRange;
      const back = compare(layout, after, before).changeRange;
      near("low", 1 + figure(back.low), 1 / (1 + figure(there.high)), { relative: 1e-12 });
      near("high", 1 + figure(back.high), 1 / (1 + figure(there.low)), { relative: 1e-12 });
    },
  );

  it("pairs in exact proportion leave no doubt about the ratio", () => {
    const { changeRange } = compare("pairs", [10, 11, 12, 13], [20, 22, 24, 26]);
    near("low", figure(changeRange.low), 1, { relative: 1e-12 });
    near("high", figure(changeRange.high), 1, { relative: 1e-12 });
  });
});

describe("percent ranges at the ends", () => {
  it("new plants that all bore nothing: the upper limit is −100 %", () => {
    const { changeRange } = compare("separate", [4, 5, 6, 5], [0, 0, 0]);
    expect(changeRange).toEqual({ low: { absent: "no-lower-limit" }, high: -1 });
  });

  it("says why there is no range", () => {
    const none = (absent: string) => ({ low: { absent }, high: { absent } });
    expect(compare("separate", [0, 0, 0], [1, 2]).changeRange).toEqual(none("usual-not-above-zero"));
    expect(compare("separate", [1, 2], [-1, -3]).changeRange).toEqual(none("new-below-zero"));
    expect(compare("separate", [1, 1], [2, 2]).changeRange).toEqual(none("all-equal"));
    const curve = steadyRatio({ usualMean: 0, triedMean: 1, critical: 2, varianceAt: () => 1, usualVariance: 1 });
    expect(percentRange(curve, false)).toEqual({ ...none("usual-not-above-zero"), g: Number.POSITIVE_INFINITY });
    const below = steadyRatio({ usualMean: 1, triedMean: -1, critical: 2, varianceAt: () => 1, usualVariance: 1 });
    expect(percentRange(below, true)).toEqual({ ...none("new-below-zero"), g: 4 });
  });

  it("believes the test about no change, whatever the curve's rounding says", () => {
    const curve = steadyRatio({ usualMean: 10, triedMean: 12, critical: 2, varianceAt: () => 1, usualVariance: 0 });
    // |12 − 10 r| = 2 at r = 1: on the border
    expect(figure(percentRange(curve, true).low)).toBeGreaterThan(0);
    expect(figure(percentRange(curve, false).low)).toBeLessThanOrEqual(0);
  });

  it.each([
    { triedMean: 12, side: "low", sign: 1 },
    { triedMean: 8, side: "high", sign: -1 },
  ] as const)(
    "a curve whose limit is a little beyond no change: new average $triedMean",
    ({ triedMean, side, sign }) => {
      // |triedMean − 10 r| = 2.001: the curve alone would let no change in by 0.0001
      const curve = steadyRatio({ usualMean: 10, triedMean, critical: 2.001, varianceAt: () => 1, usualVariance: 0 });
      expect(sign * figure(percentRange(curve, true)[side])).toBeGreaterThan(0);
      near(side, figure(percentRange(curve, false)[side]), sign * -0.0001, { relative: 1e-9 });
    },
  );

  it.each([
    { triedMean: 12, low: 0, high: 0.35 },
    { triedMean: 8, low: -0.35, high: 0 },
  ])("a curve that shuts no change out against the test: new average $triedMean", ({ triedMean, low, high }) => {
    // |triedMean − 10 r| = 1.5
    const curve = steadyRatio({ usualMean: 10, triedMean, critical: 1.5, varianceAt: () => 1, usualVariance: 0 });
    const found = percentRange(curve, false);
    near("low", figure(found.low), low, { relative: 1e-12 });
    near("high", figure(found.high), high, { relative: 1e-12 });
  });
});

describe("percent ranges end where the test first speaks against a ratio", () => {
  // usual average 1, new 2: (2 − r)² > v(r) exactly where (r − a)(r − b) < 0, for v(r) = (2 − r)² + (r − a)(r − b)
  const island = (a: number, b: number) =>
    steadyRatio({
      usualMean: 1,
      triedMean: 2,
      critical: 1,
      varianceAt: (r) => (2 - r) ** 2 + (r - a) * (r - b),
      usualVariance: 2,
    });

  it.each([
    { a: 3, b: 4, low: null, high: 2 },
    { a: 0.25, b: 0.5, low: -0.5, high: null },
  ])("excluded between $a and $b only: further pieces are left out", ({ a, b, low, high }) => {
    const found = percentRange(island(a, b), false);
    nearLimit("low", found.low, low, "no-lower-limit");
    nearLimit("high", found.high, high, "no-upper-limit");
    expect(found.g).toBe(2);
  });

  it.each([
    { seen: 0.2, excludes: (r: number) => (r > 0.3 && r < 0.4) || r > 0.9, side: "high", limit: 0.3 },
    { seen: 5, excludes: (r: number) => (r > 3 && r < 4) || r < 1.1, side: "low", limit: 4 },
  ] as const)("also on the way to no change, from $seen", ({ seen, excludes, side, limit }) => {
    const range = percentRange({ usualMean: 1, triedMean: seen, excludes, g: 0 }, true);
    near(side, figure(range[side]), limit - 1, { relative: 1e-12 });
  });
});

describe("percent ranges look from a millionth to a million times", () => {
  it.each([0.01, 100])("of the ratio seen, %d", (seen) => {
    const upTo = (limit: number) => (ratio: number) => ratio > limit;
    const downTo = (limit: number) => (ratio: number) => ratio > 0 && ratio < limit;
    const range = (excludes: (ratio: number) => boolean) =>
      percentRange({ usualMean: 1, triedMean: seen, excludes, g: 0 }, false);
    near("low", 1 + figure(range(downTo(2e-6 * seen)).low), 2e-6 * seen, { absolute: Number.EPSILON });
    expect(range(downTo(5e-7 * seen)).low).toEqual({ absent: "no-lower-limit" });
    near("high", 1 + figure(range(upTo(5e5 * Math.max(1, seen))).high), 5e5 * Math.max(1, seen));
    expect(range(upTo(2e6 * Math.max(1, seen))).high).toEqual({ absent: "no-upper-limit" });
  });

  it("and at nothing: new plants that surely bore something have a lower limit, however unsure the usual average", () => {
    // |4 − r/10⁷| = r at r = 4/(1 + 10⁻⁷), a ten-millionth of the ratio seen
    const curve = steadyRatio({
      usualMean: 1e-7,
      triedMean: 4,
      critical: 1,
      varianceAt: (r) => r ** 2,
      usualVariance: 1,
    });
    const { low, high } = percentRange(curve, true);
    near("low", figure(low), 4 / (1 + 1e-7) - 1, { relative: 1e-12 });
    expect(high).toEqual({ absent: "no-upper-limit" });
  });
});
