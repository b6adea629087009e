import { expect, it } from "vitest";
import * as chiSquare from "../../src/numerics/chiSquare";
import { quantile, upperTail } from "../../src/numerics/fisherF";
import { twoSidedTail } from "../../src/numerics/studentT";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

agreesOnGrid("f_upper_tail", upperTail, { truth: 5e-13, r: 1e-12 });
// R's qf() is off by up to 1 % at tiny p with few df above the line
agreesOnGrid("f_quantile", quantile, { truth: 1e-13, r: 2e-2 });

it("Hildebrand & Poey (1985) print F(0.05; 2, 3) = 9.55", () => {
  near("F", quantile(0.95, 2, 3), 9.55, { absolute: 0.005 });
});

it("with one df above the line F is the square of t", () => {
  for (const t of [0.3, 1, 2.5, 9]) near(`${t}`, upperTail(t * t, 1, 7.5), twoSidedTail(t, 7.5), { relative: 1e-14 });
});

it("with infinitely many df below the line F is chi-square over its df", () => {
  expect(upperTail(2, 3, Number.POSITIVE_INFINITY)).toBe(chiSquare.upperTail(6, 3));
  near("quantile", quantile(0.9, 3, Number.POSITIVE_INFINITY) * 3, chiSquare.quantile(0.9, 3));
});

it("hard cases: 0, below 0, infinite F, edges of p", () => {
  expect(upperTail(0, 3, 4)).toBe(1);
  expect(upperTail(-1, 3, 4)).toBe(1);
  expect(upperTail(Number.POSITIVE_INFINITY, 3, 4)).toBe(0);
  expect(quantile(0, 3, 4)).toBe(0);
  expect(quantile(1, 3, 4)).toBe(Number.POSITIVE_INFINITY);
});

it.each([
  [Number.NaN, 3, 4],
  [1, 0, 4],
  [1, 3, -1],
  [1, Number.POSITIVE_INFINITY, 4],
  [Number.POSITIVE_INFINITY, 3, 0],
  [Number.POSITIVE_INFINITY, 3, -1],
  [Number.POSITIVE_INFINITY, -3, 4],
  [1, 3, Number.NaN],
  [1, -3, Number.POSITIVE_INFINITY],
])("no answer for F = %d with %d and %d df", (f, d1, d2) => {
  expect(upperTail(f, d1, d2)).toBeNaN();
});

it("no quantile for p outside [0, 1]", () => {
  expect(quantile(1.5, 3, 4)).toBeNaN();
  expect(quantile(-0.5, 3, 4)).toBeNaN();
});

it.each([
  [0, 4],
  [-3, 4],
  [Number.POSITIVE_INFINITY, 4],
  [3, 0],
  [3, -4],
])("no quantile with %d and %d df, not even at the ends", (d1, d2) => {
  for (const p of [0, 0.5, 1]) expect(quantile(p, d1, d2)).toBeNaN();
});
