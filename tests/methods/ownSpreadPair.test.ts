import { describe, expect, it } from "vitest";
import { ownSpreadBelow, ownSpreadPair } from "../../src/methods/ownSpreadPair";
import { percentRange } from "../../src/methods/percentRange";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";

const groups = [
  [24, 23, 31, 51],
  [34, 18, 18, 26],
  [17, 68, 59, 7],
].map(summary);

/** Printed in SciPy's tests of Games and Howell's method: first − second, with its range and p. */
const printed = [
  { one: 0, other: 1, difference: 8.25, low: -16.5492749527311, high: 33.0492749527311, p: 0.558733632413559 },
  { one: 0, other: 2, difference: -5.5, low: -63.6702454316458, high: 52.6702454316458, p: 0.941147750599221 },
];

describe("ownSpreadPair agrees with the published Games–Howell example", () => {
  it.each(printed)("$one against $other", ({ one, other, difference, low, high, p }) => {
    const found = ownSpreadPair(groups[other] ?? expect.fail(), groups[one] ?? expect.fail(), 3);
    if (found === null) throw new Error("no comparison");
    near("difference", found.difference, difference);
    // the printed figures carry the error of R's and SciPy's studentized range at 3 to 6 degrees of freedom
    near("low", found.low, low, { relative: 2e-4 });
    near("high", found.high, high, { relative: 2e-4 });
    near("p", found.pValue, p, { absolute: 2e-4 });
  });

  it.each(printed)("$one against $other: below levels above p, and not below those under it", ({ one, other, p }) => {
    const pair = [groups[other] ?? expect.fail(), groups[one] ?? expect.fail()] as const;
    expect([p - 2e-4, p + 2e-4].map((level) => ownSpreadBelow(pair, 3, level))).toEqual([false, true]);
  });
});

describe("ownSpreadPair of two treatments in all is Welch's test: R's t.test(tried, usual)", () => {
  it.each([
    {
      usual: [24, 23, 31, 51],
      tried: [34, 18, 18, 26],
      low: -27.809489129707842,
      high: 11.30948912970784,
      p: 0.32529664209110482,
    },
    {
      usual: [24, 31],
      tried: [34, 51, 47],
      low: -3.2805497790467002,
      high: 36.2805497790467,
      p: 0.07666898685889457,
    },
    {
      usual: [34, 51, 47],
      tried: [24, 31],
      low: -36.2805497790467,
      high: 3.2805497790467002,
      p: 0.07666898685889457,
    },
  ])("$usual against $tried", ({ usual, tried, low, high, p }) => {
    const found = ownSpreadPair(summary(usual), summary(tried), 2) ?? expect.fail("no comparison");
    near("low", found.low, low);
    near("high", found.high, high);
    near("p", found.pValue, p);
  });

  it("g, the usual average's own reach: qt(.975, 3)^2 * var(usual) / 4 / mean(usual)^2", () => {
    const found =
      ownSpreadPair(summary([24, 23, 31, 51]), summary([34, 18, 18, 26]), 2) ?? expect.fail("no comparison");
    near("g", found.curve.g, 0.41122096054223944);
  });
});

it("the percent range excludes no change exactly when the pair is shown to differ", () => {
  for (const gap of [0, 4, 8, 12, 16, 20, 24]) {
    const usual = summary([20, 24, 22, 27]);
    const tried = summary([20, 24, 22, 27].map((value) => value + gap));
    const found = ownSpreadPair(usual, tried, 4);
    if (found === null) throw new Error("no comparison");
    const { low } = percentRange(found.curve, found.pValue < 0.05);
    expect(Number(low) > 0, `${gap}`).toBe(found.pValue < 0.05);
    // here both are as uneven, and r = 1 is no change
    expect(found.curve.excludes(1), `${gap}`).toBe(found.pValue < 0.05);
  }
});

it("new plants that are all alike cannot come from none of the usual average, unless they bore nothing", () => {
  const against = (tried: readonly number[]) => ownSpreadPair(summary([20, 24, 22, 27]), summary(tried), 4);
  expect(against([5, 5, 5])?.curve.excludes(0)).toBe(true);
  expect(against([0, 0, 0])?.curve.excludes(0)).toBe(false);
});

it.each([
  { usual: [3], tried: [4, 5] },
  { usual: [4, 5], tried: [3] },
  { usual: [], tried: [4, 5] },
  { usual: [4, 5], tried: [] },
  { usual: [3, 3], tried: [5, 5] },
])("one plant, or none that varies, gives no comparison: $usual, $tried", ({ usual, tried }) => {
  const pair = [summary(usual), summary(tried)] as const;
  expect(ownSpreadPair(...pair, 3)).toBeNull();
  expect(ownSpreadBelow(pair, 3, 0.05)).toBeNull();
});
