import { expect, it } from "vitest";
import { isBroken, shareSeen } from "./share";

const share = { heading: "up", events: ["a", "b"], promise: { least: 0.02, most: 0.03 } };

it("adds things that exclude each other, with the error of a share", () => {
  const seen = shareSeen(share, { trials: 400, counts: { a: 60, b: 20, c: 300 } });
  expect(seen.share).toBe(0.2);
  expect(seen.error).toBeCloseTo(0.02, 12);
});

it.each([
  [0.035, 0.002, true],
  [0.035, 0.003, false],
  [0.015, 0.002, true],
  [0.015, 0.003, false],
  [0.025, 0.0001, false],
])("a share of %s with an error of %s: broken %s", (seen, error, broken) => {
  expect(isBroken(share, { share: seen, error })).toBe(broken);
});

it("without a promise nothing breaks", () => {
  expect(isBroken({ heading: "up", events: [] }, { share: 1, error: 0 })).toBe(false);
});
