import { expect, it } from "vitest";
import { logGamma } from "../../src/numerics/logGamma";
import { scaledChiAverage } from "../../src/numerics/scaledChi";
import { near } from "../near";

it.each([0.5, 1, 2.7, 10, 100, 5000])(
  "with %d df the average of 1 is 1, of S² is 1, of S is Γ((df+1)/2)/Γ(df/2)·√(2/df)",
  (df) => {
    near(
      "1",
      scaledChiAverage(() => 1, df),
      1,
      { relative: 1e-12 },
    );
    near(
      "S²",
      scaledChiAverage((s) => s * s, df),
      1,
      { relative: 1e-12 },
    );
    const expected = Math.sqrt(2 / df) * Math.exp(logGamma((df + 1) / 2) - logGamma(df / 2));
    near(
      "S",
      scaledChiAverage((s) => s, df),
      expected,
      { relative: 1e-11 },
    );
  },
);

// E e^(−c S²) = (1 + 2c/df)^(−df/2), the moment generating function of chi-square
it("keeps the relative accuracy of a tiny average that lies far to one side", () => {
  near(
    "few df",
    scaledChiAverage((s) => Math.exp(-1e6 * s * s), 3),
    (1 + 2e6 / 3) ** -1.5,
    { relative: 1e-12 },
  );
  near(
    "many df",
    scaledChiAverage((s) => Math.exp(-100 * s * s), 60),
    (1 + 200 / 60) ** -30,
    { relative: 1e-12 },
  );
});

it("infinitely many df mean that the spread is known", () => {
  expect(scaledChiAverage((s) => 7 * s, Number.POSITIVE_INFINITY)).toBe(7);
});
