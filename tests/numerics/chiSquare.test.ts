import jStat from "jstat";
import { expect, it } from "vitest";
import { lowerTail, quantile, upperTail } from "../../src/numerics/chiSquare";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

agreesOnGrid("chisq_upper_tail", upperTail, { truth: 5e-13, r: 1e-11 });
agreesOnGrid("chisq_quantile", quantile, { truth: 1e-13, r: 1e-10 });

it("two df have the closed form e^(−x/2)", () => {
  for (const x of [1e-9, 0.5, 3, 700]) {
    near("upper", upperTail(x, 2), Math.exp(-x / 2), { relative: 2e-13 });
    near("lower", lowerTail(x, 2), -Math.expm1(-x / 2), { relative: 1e-14 });
  }
});

it("jstat agrees in the lower tail", () => {
  for (const df of [1, 4.5, 30]) near(`${df}`, lowerTail(df, df), jStat.chisquare.cdf(df, df), { relative: 1e-6 });
});

it("hard cases: 0, below 0, infinite, edges of p", () => {
  expect(upperTail(0, 3)).toBe(1);
  expect(upperTail(-2, 3)).toBe(1);
  expect(upperTail(Number.POSITIVE_INFINITY, 3)).toBe(0);
  expect(quantile(0, 3)).toBe(0);
  expect(quantile(1, 3)).toBe(Number.POSITIVE_INFINITY);
});

it("no answer outside the domain", () => {
  expect(upperTail(Number.NaN, 3)).toBeNaN();
  expect(upperTail(1, 0)).toBeNaN();
  expect(lowerTail(1, -1)).toBeNaN();
  expect(quantile(0.5, 0)).toBeNaN();
  expect(quantile(2, 3)).toBeNaN();
  expect(quantile(-0.5, 3)).toBeNaN();
  expect(quantile(0.5, Number.POSITIVE_INFINITY)).toBeNaN();
});
