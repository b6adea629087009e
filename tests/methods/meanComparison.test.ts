import { describe, expect, it } from "vitest";
import { isRoundOff, meanComparison } from "../../src/methods/meanComparison";
import reference from "../reference/welch.json";
import { nearComparison } from "./nearComparison";

describe("meanComparison makes of a difference, its standard error and df what R's t.test() makes of them", () => {
  it.each(reference.cases)("$trial, $method at $confidence", (known) => {
    nearComparison(meanComparison(known, known.confidence), known, { relative: 1e-12 });
  });
});

it("a difference of 0 has t 0, p 1 and a range as wide on both sides", () => {
  const { t, pValue, low, high } = meanComparison({ difference: 0, standardError: 2, df: 1.5 }, 0.95);
  expect({ t, pValue }).toEqual({ t: 0, pValue: 1 });
  expect(low).toBe(-high);
  expect(high).toBeGreaterThan(0);
});

describe("isRoundOff: ten roundings of the larger average (R's t.test: data are essentially constant)", () => {
  const ten = 10 * 2 ** -52;

  it.each([
    ["just below, the larger average second", 0.999 * ten * 1000, [3, 1000], true],
    ["just below, the larger average below 0", 0.999 * ten * 1000, [-1000, 3], true],
    ["just above", 1.001 * ten * 1000, [3, 1000], false],
    ["nothing varies, and all averages are 0 (METHODS 4.3)", 0, [0, 0], true],
    ["hardly any spread around averages of 0", 1e-300, [0, 0], false],
  ])("%s", (_what, standardError, means, noise) => {
    expect(isRoundOff(standardError, ...means)).toBe(noise);
  });
});
