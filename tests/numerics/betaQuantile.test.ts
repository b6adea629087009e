import { expect, it } from "vitest";
import { betaRatioQuantile, smallerShare } from "../../src/numerics/betaQuantile";
import { near } from "../near";

// with b = 1 the share below x is x^a, with a = 1 the share above is (1 − x)^b
it("finds the ratio x/(1 − x) from either side", () => {
  const x = 0.2 ** (1 / 3);
  near("below", betaRatioQuantile({ side: "lower", share: 0.2 }, { a: 3, b: 1 }, 1), x / (1 - x), { relative: 1e-13 });
  const rest = 1e-12 ** (1 / 4);
  near("above", betaRatioQuantile({ side: "upper", share: 1e-12 }, { a: 1, b: 4 }, 1), (1 - rest) / rest, {
    relative: 1e-13,
  });
});

it("tells a share from its smaller side", () => {
  expect(smallerShare(0.25)).toEqual({ side: "lower", share: 0.25 });
  expect(smallerShare(0.75)).toEqual({ side: "upper", share: 0.25 });
});
