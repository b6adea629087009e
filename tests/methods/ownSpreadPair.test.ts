import { describe, expect, it } from "vitest";
import { ownSpreadPair } from "../../src/methods/ownSpreadPair";
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
});

it("the percent range excludes no change exactly when the pair is shown to differ", () => {
  for (const gap of [0, 4, 8, 12, 16, 20, 24]) {
    const usual = summary([20, 24, 22, 27]);
    const tried = summary([20, 24, 22, 27].map((value) => value + gap));
    const found = ownSpreadPair(usual, tried, 4);
    if (found === null) throw new Error("no comparison");
    const { low } = percentRange(found.curve, found.pValue < 0.05);
    expect(Number(low) > 0, `${gap}`).toBe(found.pValue < 0.05);
  }
});

it("one plant, or none that varies, gives no comparison", () => {
  expect(ownSpreadPair(summary([3]), summary([4, 5]), 3)).toBeNull();
  expect(ownSpreadPair(summary([3, 3]), summary([5, 5]), 3)).toBeNull();
});
