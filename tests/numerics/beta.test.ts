import { expect, it } from "vitest";
import { lowerTail, quantile } from "../../src/numerics/beta";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

agreesOnGrid("incomplete_beta", lowerTail, { truth: 5e-13, r: 1e-11 });
agreesOnGrid("beta_quantile", quantile, { truth: 1e-13, r: 1e-10 });

it("with b = 1 the share is x^a", () => {
  for (const x of [0.01, 0.5, 0.9]) near(`${x}`, lowerTail(x, 3.5, 1), x ** 3.5, { relative: 1e-14 });
  near("quantile", quantile(0.3, 4, 1), 0.3 ** 0.25, { relative: 1e-14 });
});

it("hard cases: the edges of x and p", () => {
  expect(lowerTail(0, 2, 3)).toBe(0);
  expect(lowerTail(1, 2, 3)).toBe(1);
  expect(quantile(0, 2, 3)).toBe(0);
  expect(quantile(1, 2, 3)).toBe(1);
});

it.each([
  [-0.1, 2, 3],
  [1.1, 2, 3],
  [0.5, 0, 3],
  [0.5, 2, -1],
  [0, 2, 0],
  [1, 0, 2],
  [Number.NaN, 2, 3],
])("no answer for x or p = %d, a = %d, b = %d", (x, a, b) => {
  expect(lowerTail(x, a, b)).toBeNaN();
  expect(quantile(x, a, b)).toBeNaN();
});
