import jStat from "jstat";
import { expect, it } from "vitest";
import { logGamma } from "../../src/numerics/logGamma";
import { near } from "../near";

// Γ(½) = √π, Γ(n) = (n − 1)!
it.each([
  [0.5, Math.log(Math.PI) / 2],
  [1, 0],
  [2, 0],
  [1.5, Math.log(Math.PI) / 2 - Math.LN2],
  [21, Math.log(2432902008176640000)],
  [1e-300, 300 * Math.LN10],
])("ln Γ(%d)", (x, exact) => {
  near("value", logGamma(x), exact, { absolute: 2e-15, relative: 1e-15 });
});

it("jstat's loggam agrees", () => {
  for (const x of [0.1, 0.9, 3.3, 12, 77.7, 1e4, 1e7]) near(`${x}`, logGamma(x), jStat.loggam(x), { relative: 1e-12 });
});

it("climbs by ln x from x to x + 1", () => {
  for (const x of [0.01, 0.7, 5.5, 11.5, 300])
    near(`${x}`, logGamma(x + 1) - logGamma(x), Math.log(x), { absolute: 1e-12 });
});

it("hard cases: 0, below 0, NaN, infinite", () => {
  expect(logGamma(0)).toBeNaN();
  expect(logGamma(-1.5)).toBeNaN();
  expect(logGamma(Number.NaN)).toBeNaN();
  expect(logGamma(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
});
