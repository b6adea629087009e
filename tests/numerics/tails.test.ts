import { expect, it } from "vitest";
import { fromLower, fromUpper } from "../../src/numerics/tails";

it("the other tail is what is left of 1; a small one stays as it is", () => {
  expect(fromLower(0.25)).toEqual({ lower: 0.25, upper: 0.75 });
  expect(fromUpper(1e-20)).toEqual({ lower: 1, upper: 1e-20 });
});

it("NaN leaves both unknown", () => {
  expect(fromLower(Number.NaN)).toEqual({ lower: Number.NaN, upper: Number.NaN });
});
