import { expect, it } from "vitest";
import { lowerTail, upperTail } from "../../src/numerics/binomial";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

agreesOnGrid("binomial_lower", lowerTail, { truth: 5e-13, r: 1e-10 });

it("ten fair coins, counted out: at most 2 heads in 56 of 1024, more than 7 in 56", () => {
  near("≤ 2", lowerTail(2, 10, 0.5), 56 / 1024, { relative: 1e-14 });
  near("> 7", upperTail(7, 10, 0.5), 56 / 1024, { relative: 1e-14 });
});

it("hard cases: below none, all, no trials, certain and impossible, k between whole numbers", () => {
  expect(lowerTail(-1, 10, 0.5)).toBe(0);
  expect(upperTail(-1, 10, 0.5)).toBe(1);
  expect(lowerTail(10, 10, 0.5)).toBe(1);
  expect(lowerTail(0, 0, 0.5)).toBe(1);
  expect(lowerTail(9, 10, 1)).toBe(0);
  expect(lowerTail(0, 10, 0)).toBe(1);
  expect(lowerTail(2.9, 10, 0.5)).toBe(lowerTail(2, 10, 0.5));
});

it.each([
  [Number.NaN, 10, 0.5],
  [1, 2.5, 0.5],
  [1, -1, 0.5],
  [1, 10, 1.1],
  [1, 10, -0.1],
  [-1, 10, 1.1],
  [10, 10, -0.1],
])("no answer for k = %d, n = %d, p = %d", (k, n, p) => {
  expect(lowerTail(k, n, p)).toBeNaN();
  expect(upperTail(k, n, p)).toBeNaN();
});
