import { expect, it } from "vitest";
import { sum } from "../../src/numerics/sum";

it("adds from the first on: 1e16 + 1 − 1e16 is 0, 1e16 − 1e16 + 1 is 1", () => {
  expect(sum([1e16, 1, -1e16])).toBe(0);
  expect(sum([1e16, -1e16, 1])).toBe(1);
});

it("of nothing is 0, and NaN stays NaN", () => {
  expect(sum([])).toBe(0);
  expect(sum([1, Number.NaN, 2])).toBeNaN();
});
