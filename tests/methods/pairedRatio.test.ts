import { expect, it } from "vitest";
import { pairedRatio } from "../../src/methods/pairedRatio";
import { near } from "../near";
import reference from "../reference/onePiece.json";

const { usual, tried, pairedP, pairedG } = reference.cases;
const curve = (confidence: number) => pairedRatio(usual, tried, confidence);

it("excludes the ratio 1 exactly when R's t.test() finds a difference", () => {
  expect(curve(1 - pairedP * 1.000001).excludes(1)).toBe(true);
  expect(curve(1 - pairedP * 0.999999).excludes(1)).toBe(false);
});

it("never excludes the ratio seen, and excludes one far from it", () => {
  const { usualMean, triedMean, excludes } = curve(0.95);
  expect(excludes(triedMean / usualMean)).toBe(false);
  expect([excludes(0.2), excludes(5)]).toEqual([true, true]);
});

it("g is R's squared relative reach of the usual average", () => {
  near("g", curve(0.95).g, pairedG);
});
