import { describe, expect, it } from "vitest";
import { contrast, covariance, unscaledVariance } from "../../src/methods/contrast";
import type { TreatmentModel } from "../../src/methods/treatmentModel";
import { near } from "../near";

/** Averages 10, 13 and 9; variances 2, 3 and 5 and covariances 1, 0.5 and −1, times a mean square of 4. */
const model: TreatmentModel = {
  means: [10, 13, 9],
  counts: [1, 1, 1],
  unscaledCovariance: [
    [2, 1, 0.5],
    [1, 3, -1],
    [0.5, -1, 5],
  ],
  meanSquare: 4,
  df: 7,
  squares: { beds: null, treatments: { sumOfSquares: 1, df: 2 }, residual: { sumOfSquares: 28, df: 7 } },
  bedShare: 0,
};

describe("the difference tried − usual, its standard error and t, worked out by hand", () => {
  it.each([
    [0, 1, 3, 3, Math.sqrt(12)],
    [1, 0, -3, 3, Math.sqrt(12)],
    [0, 2, -1, 6, Math.sqrt(24)],
    [1, 2, -4, 10, Math.sqrt(40)],
  ] as const)("from %d to %d: %d, variance %d", (...row) => {
    const [usual, tried, difference, variance, standardError] = row;
    const found = contrast(model, { usual, tried });
    expect(found.difference).toBe(difference);
    expect(unscaledVariance(model, { usual, tried })).toBe(variance);
    near("standard error", found.standardError, standardError);
    near("t", found.t, difference / standardError);
  });
});

it("a treatment that is not there has no figures", () => {
  expect(contrast(model, { usual: 0, tried: 3 }).t).toBeNaN();
  expect(covariance(model.unscaledCovariance, 3, 0)).toBeNaN();
});
