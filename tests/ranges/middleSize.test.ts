import fc from "fast-check";
import { expect, it } from "vitest";
import { middleSize } from "../../src/ranges/middleSize";

const middle = (...numbers: readonly number[]) => middleSize(Float64Array.from(numbers));

it("is the middle of the sizes above 0, the upper one of two, signs aside", () => {
  expect(middle(3, 1, 2)).toBe(2);
  expect(middle(4, 1, 3, 2)).toBe(3);
  expect(middle(-9, 0, 1, 2, 0)).toBe(2);
  expect(middle(5, 5, 5, 5)).toBe(5);
});

it("is 0 where nothing is above 0", () => {
  expect(middle()).toBe(0);
  expect(middle(0, Number.NaN, -0)).toBe(0);
});

it("agrees with sorting, and leaves the numbers alone", () => {
  const numbers = fc.array(fc.oneof(fc.integer({ min: -20, max: 20 }), fc.double({ noNaN: true })), { minLength: 1 });
  fc.assert(
    fc.property(numbers, (given) => {
      const before = Float64Array.from(given);
      const sizes = given.map(Math.abs).filter((size) => size > 0);
      const sorted = sizes.sort((one, other) => one - other);
      expect(middleSize(before)).toBe(sorted[Math.floor(sorted.length / 2)] ?? 0);
      expect([...before]).toEqual([...Float64Array.from(given)]);
    }),
    { numRuns: 2000, seed: 65 },
  );
});
