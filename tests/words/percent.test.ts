import { expect, test } from "vitest";
import { percentSize, percentText, signedPercent } from "../../src/words/percent";

test.each([
  [0.4413621, "44 %", "+44 %"],
  [-0.006749543, "−1 %", "−1 %"],
  [0.9478, "95 %", "+95 %"],
  [0.994, "99 %", "+99 %"],
  [0.996, "100 %", "+100 %"],
  [1.36, "140 %", "+140 %"],
  [1.35, "140 %", "+140 %"],
  [-1, "−100 %", "−100 %"],
  [-0.994, "−99 %", "−99 %"],
  [-0.9975, "−99.8 %", "−99.8 %"],
  [-0.99999, "−99.9 %", "−99.9 %"],
  [5.04345, "500 %", "+500 %"],
  [0, "0 %", "0 %"],
  [-0, "0 %", "0 %"],
  [0.003, "0.3 %", "+0.3 %"],
  [-0.003, "−0.3 %", "−0.3 %"],
  [0.0001, "0 %", "0 %"],
  [-0.0001, "0 %", "0 %"],
  [0.005, "1 %", "+1 %"],
  [0.125, "13 %", "+13 %"],
  [-0.125, "−13 %", "−13 %"],
  [0.145, "15 %", "+15 %"],
])("percentText and signedPercent of %d: %s, %s", (fraction, plain, signed) => {
  expect(percentText(fraction)).toBe(plain);
  expect(signedPercent(fraction)).toBe(signed);
});

test("percentSize is the percent shown, without its sign", () => {
  expect([-0.9975, -0.14, 0.14, -1.5, 0].map(percentSize)).toEqual(["99.8 %", "14 %", "14 %", "150 %", "0 %"]);
});
