import { expect, test } from "vitest";
import { percentOfUsual, timesText, worthTimes, wrongTimesText } from "../../src/words/times";

test.each([
  [2, "3", "2", "300 %"],
  [1.36, "2.4", "1.4", "240 %"],
  [1, "2", "1", "200 %"],
  [0.4413621, "1.44", "0.44", "144 %"],
  [-0.25, "0.75", "−0.25", "75 %"],
  [-1, "0", "−1", "0 %"],
  [0.003, "1.003", "0.003", "100.3 %"],
])("for a change of %d the times come from the percent shown: %s", (change, times, wrong, ofUsual) => {
  expect(timesText(change)).toBe(times);
  expect(wrongTimesText(change)).toBe(wrong);
  expect(percentOfUsual(change)).toBe(ofUsual);
});

test("worthTimes holds from a shown 100 % on, and never for a fall", () => {
  expect([0.99, 0.996, 1, 2, -1].map(worthTimes)).toEqual([false, true, true, true, false]);
});
