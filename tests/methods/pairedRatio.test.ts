import { describe, expect, it } from "vitest";
import { pairedRatio } from "../../src/methods/pairedRatio";
import { near } from "../near";
import reference from "../reference/onePiece.json";
import ranges from "../reference/percentRange.json";
import { endsWhere } from "./endsWhere";
import { trialOf } from "./trialOf";

const { usual, tried, pairedP, pairedG } = reference.cases;
const curve = (confidence: number) => pairedRatio(usual, tried, confidence);

describe("the ratios kept end at the roots of Fieller's quadratic (R)", () => {
  const cases = ranges.cases.filter(({ method }) => method === "paired");
  it.each(cases)("$trial at $confidence", (known) => {
    const trial = trialOf(known.trial);
    endsWhere(pairedRatio(trial.usual, trial.tried, known.confidence), known);
  });
});

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

it("pairs in exact proportion keep the ratio seen, and no other", () => {
  const usualPlants = [1, 1.1, 1.3];
  const { usualMean, triedMean, excludes } = pairedRatio(
    usualPlants,
    usualPlants.map((value) => 3 * value),
    0.95,
  );
  expect([2.999, triedMean / usualMean, 3.001].map(excludes)).toEqual([true, false, true]);
});
