import fc from "fast-check";
import { expect, it } from "vitest";
import { choose } from "../../src/numerics/choose";
import { near } from "../near";

// Exact values by whole-number arithmetic (Pascal's rule in arbitrary precision)
it.each([
  [5, 2, 10],
  [12, 6, 924],
  [24, 12, 2704156],
  [52, 5, 2598960],
  [56, 28, 7648690600760440],
  [2000, 5, 265335665000400],
])("there are as many ways to choose from %d things %d: %d", (n, k, ways) => {
  expect(choose(n, k)).toBe(ways);
});

it("follows Pascal's rule exactly below 2⁵³", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 55 }), fc.integer({ min: 0, max: 55 }), (n, k) => {
      expect(choose(n, k)).toBe(choose(n - 1, k) + choose(n - 1, k - 1));
    }),
  );
});

it("beyond 2⁵³ it is close: C(100, 50) = 100891344545564193334812497256", () => {
  near("ways", choose(100, 50), Number(100891344545564193334812497256n), { relative: 1e-14 });
  expect(choose(5000, 2500)).toBe(Number.POSITIVE_INFINITY);
});

it("hard cases: none, all, too many, fewer than none", () => {
  expect(choose(0, 0)).toBe(1);
  expect(choose(7, 0)).toBe(1);
  expect(choose(7, 7)).toBe(1);
  expect(choose(7, 8)).toBe(0);
  expect(choose(7, -1)).toBe(0);
});

it.each([
  [-1, 0],
  [2.5, 1],
  [5, 0.5],
  [Number.NaN, 1],
])("no answer for choosing from %d things %d", (n, k) => {
  expect(choose(n, k)).toBeNaN();
});
