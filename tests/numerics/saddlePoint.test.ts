import { expect, it } from "vitest";
import { deviance, stirlingError } from "../../src/numerics/saddlePoint";
import { near } from "../near";

// ln n! and e.g. Γ(½) = √π are known exactly
it.each([
  [0.5, Math.log(Math.sqrt(Math.PI))],
  [1, 0],
  [2, 0],
  [5, Math.log(24)],
  [11, Math.log(3628800)],
  [13, Math.log(479001600)],
  [21, Math.log(2432902008176640000)],
])("what Stirling's formula leaves out of ln Γ(%d)", (x, logGamma) => {
  const formula = (x - 0.5) * Math.log(x) - x + Math.log(2 * Math.PI) / 2;
  near("error", stirlingError(x), logGamma - formula, { absolute: 2e-14 });
});

// the bounds 1/(12x + 1) < error < 1/(12x): H. Robbins (1955), American Mathematical Monthly 62, 26–29
it("lies within Robbins's bounds for whole numbers", () => {
  for (const x of [1, 2, 7, 11, 12, 100, 1e6, 1e12]) {
    expect(stirlingError(x)).toBeGreaterThan(1 / (12 * x + 1));
    expect(stirlingError(x)).toBeLessThan(1 / (12 * x));
  }
});

it("the deviance is exact where it does not cancel and its series where it does", () => {
  near("far", deviance(3, 10), 3 * Math.log(0.3) + 7, { relative: 1e-14 });
  // x ln(x/m) + m − x = d²/(2m) − d³/(6m²) + d⁴/(12m³) … with d = x − m
  near("close", deviance(1000 + 2 ** -10, 1000), 2 ** -20 / 2000 - 2 ** -30 / 6e6, { relative: 1e-11 });
  near("close, below", deviance(1e9 - 3, 1e9), 9 / 2e9 + 27 / 6e18, { relative: 1e-14 });
});

it("hard cases of the deviance: equal, none, nothing expected, NaN", () => {
  expect(deviance(7, 7)).toBe(0);
  expect(deviance(0, 7)).toBe(7);
  expect(deviance(7, 0)).toBe(Number.POSITIVE_INFINITY);
  expect(deviance(Number.NaN, 7)).toBeNaN();
});
