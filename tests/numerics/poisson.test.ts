import { expect, it } from "vitest";
import { lowerTail, upperTail } from "../../src/numerics/poisson";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

agreesOnGrid("poisson_lower", lowerTail, { truth: 1e-12, r: 1e-11 });
agreesOnGrid("poisson_upper", upperTail, { truth: 1e-12, r: 1e-11 });

it("no event has chance e^−average", () => {
  near("none", lowerTail(0, 3), Math.exp(-3), { relative: 1e-14 });
  near("some", upperTail(0, 1e-9), 1e-9, { relative: 1e-9 });
});

it("the printed exact range of 15 in 400 (METHODS 10, item 48: .0209885 to .0618505) leaves a fortieth beyond each end", () => {
  near("at the low end", upperTail(14, 400 * 0.0209885), 0.025, { relative: 2e-5 });
  near("at the high end", lowerTail(15, 400 * 0.0618505), 0.025, { relative: 2e-5 });
});

it("hard cases: k below 0, average 0, k between whole numbers", () => {
  expect(lowerTail(-1, 3)).toBe(0);
  expect(upperTail(-1, 3)).toBe(1);
  expect(lowerTail(0, 0)).toBe(1);
  expect(upperTail(4, 0)).toBe(0);
  expect(lowerTail(2.7, 3)).toBe(lowerTail(2, 3));
});

it("no answer outside the domain", () => {
  expect(lowerTail(1, -1)).toBeNaN();
  expect(upperTail(1, Number.NaN)).toBeNaN();
  expect(lowerTail(Number.NaN, 2)).toBeNaN();
  // below 0 as well, where every average in the domain gives 0 and 1
  for (const average of [-1, Number.NaN]) {
    expect(lowerTail(-1, average)).toBeNaN();
    expect(upperTail(-1, average)).toBeNaN();
  }
});
