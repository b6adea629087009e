import { describe, expect, it } from "vitest";
import { separateRatio } from "../../src/methods/separateRatio";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import reference from "../reference/onePiece.json";
import ranges from "../reference/percentRange.json";
import { endsWhere } from "./endsWhere";
import { trialOf } from "./trialOf";

const { usual, tried, welchP, welchG } = reference.cases;
const curve = (confidence: number) => separateRatio(summary(usual), summary(tried), confidence);

describe("the ratios kept end where R's uniroot() on Welch's test ends them", () => {
  const cases = ranges.cases.filter(({ method }) => method === "separate");
  it.each(cases)("$trial at $confidence", (known) => {
    const trial = trialOf(known.trial);
    endsWhere(separateRatio(summary(trial.usual), summary(trial.tried), known.confidence), known);
  });
});

it("excludes the ratio 1 exactly when R's t.test() finds a difference", () => {
  expect(curve(1 - welchP * 1.000001).excludes(1)).toBe(true);
  expect(curve(1 - welchP * 0.999999).excludes(1)).toBe(false);
});

it("never excludes the ratio seen, and excludes one far from it", () => {
  const { usualMean, triedMean, excludes } = curve(0.95);
  expect(excludes(triedMean / usualMean)).toBe(false);
  expect([excludes(0.2), excludes(5)]).toEqual([true, true]);
});

it("g is R's squared relative reach of the usual average", () => {
  near("g", curve(0.95).g, welchG);
});

it("new plants all alike: the ratio 0, where no variance is left, is kept only if they bore nothing", () => {
  const alike = (value: number) => separateRatio(summary(usual), summary([value, value, value]), 0.95);
  expect(alike(0).excludes(0)).toBe(false);
  expect(alike(3).excludes(0)).toBe(true);
});
