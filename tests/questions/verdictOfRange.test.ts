import { expect, it } from "vitest";
import { compareMeans } from "../../src/methods/compareMeans";
import { verdictOfRange } from "../../src/questions/verdictOfRange";

const compared = (usual: readonly number[], tried: readonly number[]) =>
  compareMeans(usual, tried, { layout: "separate", confidence: 0.95 });

it("a range wholly above 10 % is enough at 10 %, and too small at 200 %", () => {
  const found = compared([10, 11, 10, 11], [18, 19, 18, 19]);
  expect(verdictOfRange(found, 0.1)).toBe("up-enough");
  expect(verdictOfRange(found, 2)).toBe("up-small");
});

it("without a test or a percent it says why", () => {
  expect(verdictOfRange(compared([10], [18, 19]), 0.1)).toEqual({ absent: "one-plant" });
  expect(verdictOfRange(compared([0, 0, 0], [1, 2, 3]), 0.1)).toEqual({ absent: "usual-not-above-zero" });
});
