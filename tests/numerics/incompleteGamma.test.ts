import { expect, it } from "vitest";
import { gammaKernel, gammaTails } from "../../src/numerics/incompleteGamma";
import { upperTail } from "../../src/numerics/normal";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

agreesOnGrid("chisq_upper_tail", (x = 0, df = 0) => gammaTails(df / 2, x / 2).upper, { truth: 5e-13, r: 1e-11 });

it("a = ½ is the normal law, a = 1 the exponential, a = 3 a Poisson sum", () => {
  near("½", gammaTails(0.5, 4.5).upper, 2 * upperTail(3), { relative: 1e-14 });
  near("1", gammaTails(1, 0.1).lower, -Math.expm1(-0.1), { relative: 1e-14 });
  near("3", gammaTails(3, 2.5).upper, Math.exp(-2.5) * (1 + 2.5 + 3.125), { relative: 1e-14 });
});

it("the series and the fraction meet at x = a + 1", () => {
  for (const a of [0.3, 5, 400]) {
    const [before, after] = [gammaTails(a, (a + 1) * (1 - 1e-9)), gammaTails(a, (a + 1) * (1 + 1e-9))];
    near(`${a}`, after.lower - before.lower, 2e-9 * gammaKernel(a, a + 1), { relative: 1e-5 });
  }
});

it("hard cases: 0, infinite, outside the domain", () => {
  expect(gammaTails(2, 0)).toEqual({ lower: 0, upper: 1 });
  expect(gammaTails(2, Number.POSITIVE_INFINITY)).toEqual({ lower: 1, upper: 0 });
  for (const [a, x] of [
    [0, 1],
    [-1, 1],
    [2, -1],
    [0, 0],
    [2, Number.NaN],
  ] as const) {
    expect(gammaTails(a, x).lower).toBeNaN();
  }
});
