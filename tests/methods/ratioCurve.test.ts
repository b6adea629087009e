import { describe, expect, it } from "vitest";
import { type SteadyTest, steadyRatio } from "../../src/methods/ratioCurve";
import ranges from "../reference/percentRange.json";
import tests from "../reference/welch.json";
import { endsWhere } from "./endsWhere";
import { trialOf } from "./trialOf";

/** Student's pooled test made of R's own figures, so that nothing but the curve is on trial. */
function pooledByR(trial: string, confidence: number): SteadyTest {
  const { usual, tried } = trialOf(trial);
  const test = tests.cases.find(
    (known) => known.trial === trial && known.method === "pooled" && known.confidence === confidence,
  );
  if (test === undefined) throw new Error(`no test of ${trial}`);
  const usualMean = usual.reduce((sum, value) => sum + value, 0) / usual.length;
  const variance = test.standardError ** 2 / (1 / usual.length + 1 / tried.length);
  return {
    usualMean,
    triedMean: usualMean + test.difference,
    critical: (test.high - test.difference) / test.standardError,
    varianceAt: (ratio) => variance * (1 / tried.length + ratio ** 2 / usual.length),
    usualVariance: variance / usual.length,
  };
}

describe("the ratios kept end at the roots of Fieller's quadratic (R)", () => {
  const cases = ranges.cases.filter(({ method }) => method === "pooled");
  it.each(cases)("$trial at $confidence", (known) => {
    endsWhere(steadyRatio(pooledByR(known.trial, known.confidence)), known);
  });
});

describe("steadyRatio by arithmetic", () => {
  const plain = { usualMean: 10, triedMean: 12, critical: 2, varianceAt: () => 1, usualVariance: 1 };

  it("a gap of exactly the critical number of standard errors is not excluded, either way", () => {
    const { excludes } = steadyRatio(plain);
    // |12 − 10 r| against 2
    expect([0.999, 1, 1.2, 1.4, 1.401].map(excludes)).toEqual([true, false, false, false, true]);
  });

  it("the variance is that of the ratio asked about", () => {
    const { excludes } = steadyRatio({ ...plain, varianceAt: (ratio) => (ratio === 0 ? 36 : 1) });
    expect([0, 0.1].map(excludes)).toEqual([false, true]);
  });

  it("without variance only the ratio seen is left", () => {
    const { excludes } = steadyRatio({ ...plain, triedMean: 20, varianceAt: () => 0 });
    expect([1.999, 2, 2.001].map(excludes)).toEqual([true, false, true]);
  });

  it("g is 1 when the usual average's own range just reaches 0, and endless for an average of 0", () => {
    expect(steadyRatio(plain).g).toBe(0.04);
    expect(steadyRatio({ ...plain, usualVariance: 25 }).g).toBe(1);
    expect(steadyRatio({ ...plain, usualMean: 0 }).g).toBe(Number.POSITIVE_INFINITY);
  });
});
