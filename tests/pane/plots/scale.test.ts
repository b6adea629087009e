import fc from "fast-check";
import { expect, it } from "vitest";
import { scale, ticks } from "../../../src/pane/plots/scale";

it("goes straight from one end to the other", () => {
  expect([0, 5, 10, 20].map(scale([0, 10], [100, 200]))).toEqual([100, 150, 200, 300]);
  expect(scale([3, 3], [100, 200])(3)).toBe(100);
});

it.each([
  [0, 10, 5, [0, 2, 4, 6, 8, 10]],
  [0.1, 0.98, 4, [0.5]],
  [-1300, 1300, 5, [-1000, 0, 1000]],
  [7, 7, 4, [7]],
])("ticks from %d to %d, about %d: rather fewer than crowded", (low, high, about, figures) => {
  expect(ticks(low, high, about)).toEqual(figures);
});

it("ticks lie within the ends and are few", () => {
  const ends = fc.tuple(
    fc.double({ min: -1e6, max: 1e6, noNaN: true }),
    fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
  );
  fc.assert(
    fc.property(ends, ([low, span]) => {
      const figures = ticks(low, low + span, 5);
      const slack = span * 1e-6;
      return figures.length <= 6 && figures.every((one) => one >= low - slack && one <= low + span + slack);
    }),
  );
});
