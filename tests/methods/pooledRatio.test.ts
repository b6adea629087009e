import { describe, expect, it } from "vitest";
import { pooledRatio } from "../../src/methods/pooledRatio";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import reference from "../reference/onePiece.json";
import ranges from "../reference/percentRange.json";
import { endsWhere } from "./endsWhere";
import { trialOf } from "./trialOf";

const { usual, tried, studentP, pooledG } = reference.cases;
const curve = (confidence: number) => pooledRatio(summary(usual), summary(tried), confidence);

describe("the ratios kept end at the roots of Fieller's quadratic (R)", () => {
  const cases = ranges.cases.filter(({ method }) => method === "pooled");
  it.each(cases)("$trial at $confidence", (known) => {
    const trial = trialOf(known.trial);
    endsWhere(pooledRatio(summary(trial.usual), summary(trial.tried), known.confidence), known);
  });
});

it("excludes the ratio 1 exactly when R's t.test() finds a difference", () => {
  expect(curve(1 - studentP * 1.000001).excludes(1)).toBe(true);
  expect(curve(1 - studentP * 0.999999).excludes(1)).toBe(false);
});

it("never excludes the ratio seen, and excludes one far from it", () => {
  const { usualMean, triedMean, excludes } = curve(0.95);
  expect(excludes(triedMean / usualMean)).toBe(false);
  expect([excludes(0.2), excludes(5)]).toEqual([true, true]);
});

it("g is R's squared relative reach of the usual average", () => {
  near("g", curve(0.95).g, pooledG);
});
