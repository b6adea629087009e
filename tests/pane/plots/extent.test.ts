import { expect, it } from "vitest";
import { extent } from "../../../src/pane/plots/extent";

it.each([
  [[3], [3, 3]],
  [
    [2, -7, 5, 5],
    [-7, 5],
  ],
  [
    [1e-300, 1e300],
    [1e-300, 1e300],
  ],
  [[], [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]],
] as const)("of %j is %j", (values, ends) => {
  expect(extent(values)).toEqual(ends);
});

it("takes more figures than a call takes arguments", () => {
  const many = Array.from({ length: 2_000_000 }, (_, at) => at);
  expect(() => Math.max(...many)).toThrow(RangeError);
  expect(extent(many)).toEqual([0, 1_999_999]);
});
