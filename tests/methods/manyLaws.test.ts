import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { additiveModel } from "../../src/methods/additiveModel";
import { againstUsualTest } from "../../src/methods/againstUsualTest";
import { allPairsTest } from "../../src/methods/allPairsTest";
import { allTogether, allTogetherOwnSpread } from "../../src/methods/allTogether";
import { connectedTreatments } from "../../src/methods/connectedTreatments";
import { contrast } from "../../src/methods/contrast";
import { modelRatio } from "../../src/methods/modelRatio";
import { oneWayModel } from "../../src/methods/oneWayModel";
import { ownSpreadPair } from "../../src/methods/ownSpreadPair";
import { type PercentRange, percentRange } from "../../src/methods/percentRange";
import type { PlantInModel, TreatmentModel } from "../../src/methods/treatmentModel";
import { isKnown } from "../../src/nouns/known";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import { nearEnd } from "./nearEnd";

/** 3 treatments in 4 beds with some plants missing; sixteenths, so that shifts and doublings are exact. */
const trials = fc
  .record({
    sixteenths: fc.array(fc.integer({ min: 16, max: 1600 }), { minLength: 12, maxLength: 12 }),
    missing: fc.uniqueArray(fc.nat({ max: 11 }), { maxLength: 3 }),
  })
  .map(({ sixteenths, missing }) =>
    sixteenths
      .map((value, at): PlantInModel => ({ value: value / 16, treatment: at % 3, bed: Math.floor(at / 3) }))
      .filter((_, at) => !missing.includes(at)),
  )
  .filter((plants) => modelOf(plants) !== null && (modelOf(plants)?.meanSquare ?? 0) > 1e-6);

function modelOf(plants: readonly PlantInModel[]): TreatmentModel | null {
  const counts = [0, 1, 2].map((treatment) => plants.filter((plant) => plant.treatment === treatment).length);
  const beds = new Set(plants.map(({ bed }) => bed)).size;
  return counts.includes(0) || beds < 4 || connectedTreatments(plants).length > 1 ? null : additiveModel(plants);
}

function groupsOf(plants: readonly PlantInModel[]): readonly (readonly number[])[] {
  return [0, 1, 2].map((wanted) => plants.filter(({ treatment }) => treatment === wanted).map(({ value }) => value));
}

/** With beds and without. */
function models(plants: readonly PlantInModel[]): readonly TreatmentModel[] {
  return [modelOf(plants) ?? expect.fail("no model"), oneWayModel(groupsOf(plants))];
}

interface Change {
  readonly plants: (plant: PlantInModel) => PlantInModel;
  /** Where a treatment is found after the change. */
  readonly treatment?: (before: number) => number;
  /** How many times as large the differences become. */
  readonly times?: number;
  /** How far averages are rounded afterwards, in the values' unit. */
  readonly rounded?: number;
}

/** Differences, t, F and p-values before and after. */
function sameComparisons(
  plants: readonly PlantInModel[],
  { plants: change, treatment, times = 1, rounded = 0 }: Change,
): void {
  const [before, after] = [models(plants), models(plants.map(change))];
  const at = treatment ?? ((same: number) => same);
  for (const [which, old] of before.entries()) {
    const now = after[which] ?? expect.fail("no model");
    const size = Math.sqrt(old.meanSquare);
    near("mean square", now.meanSquare, old.meanSquare * times ** 2, { relative: 1e-9 });
    near("F", allTogether(now).f, allTogether(old).f, { relative: 1e-8, absolute: 1e-9 });
    near("bed share", now.bedShare, old.bedShare * times ** 2, {
      relative: 1e-7,
      absolute: 1e-9 * (size * times) ** 2,
    });
    for (const [usual, tried] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ] as const) {
      const [one, other] = [contrast(old, { usual, tried }), contrast(now, { usual: at(usual), tried: at(tried) })];
      const absolute = Math.max(1e-10 * size * Math.abs(times), 2 * rounded);
      near("difference", other.difference, one.difference * times, { relative: 1e-9, absolute });
      near("t", other.t, one.t * Math.sign(times), { relative: 1e-9, absolute: 1e-9 + (4 * rounded) / size });
      const tails = [againstUsualTest(old, usual).pValue(one.t), againstUsualTest(now, at(usual)).pValue(other.t)];
      const tail = { absolute: 1e-9 + (8 * rounded) / size };
      near("p against the usual", tails[1] ?? 0, tails[0] ?? 0, tail);
      near("p of all pairs", allPairsTest(now).pValue(other.t), allPairsTest(old).pValue(one.t), tail);
    }
  }
}

/** The percent range of treatment 2 against treatment 0. */
function firstRange(model: TreatmentModel): PercentRange {
  const duo = { usual: 0, tried: 2 };
  const { critical, pValue } = againstUsualTest(model, 0);
  return percentRange(modelRatio(model, duo, critical), pValue(contrast(model, duo).t) < 0.05);
}

function nearRange(found: PercentRange, expected: PercentRange): void {
  for (const end of ["low", "high"] as const) {
    const known = isKnown(expected[end]) ? expected[end] : null;
    nearEnd(end, found[end], known, { relative: 1e-6, absolute: 1e-8 });
  }
}

const FEW = { numRuns: 15 };

describe("the comparisons of several treatments, with beds and without", () => {
  it("do not depend on which treatment has which number", () => {
    const treatment = (before: number) => (before + 1) % 3;
    const change = {
      plants: (plant: PlantInModel) => ({ ...plant, treatment: treatment(plant.treatment) }),
      treatment,
    };
    fc.assert(
      fc.property(trials, (plants) => sameComparisons(plants, change)),
      FEW,
    );
  });

  it("do not depend on which bed has which number", () => {
    const change = { plants: (plant: PlantInModel) => ({ ...plant, bed: 3 - plant.bed }) };
    fc.assert(
      fc.property(trials, (plants) => sameComparisons(plants, change)),
      FEW,
    );
  });

  it("do not depend on the order of the rows", () => {
    fc.assert(
      fc.property(trials, fc.integer({ min: 1, max: 8 }), (plants, from) => {
        const turned = [...plants.slice(from), ...plants.slice(0, from)].toReversed();
        const [before, after] = [models(plants), models(turned)];
        // an average with the beds removed may come out near 0: it is rounded as the values are
        const absolute = 2 * Number.EPSILON * Math.max(...plants.map(({ value }) => value));
        for (const [which, old] of before.entries()) {
          const now = after[which] ?? expect.fail("no model");
          near("mean square", now.meanSquare, old.meanSquare, { relative: 1e-10 });
          for (const [at, mean] of old.means.entries()) {
            near("average", now.means[at] ?? 0, mean, { relative: 1e-12, absolute });
          }
        }
      }),
    );
  });

  it.each([-64, 1024, 2 ** 20])("an amount of %d more in every plant changes no comparison", (more) => {
    const plants = (plant: PlantInModel) => ({ ...plant, value: plant.value + more });
    const change = { plants, rounded: Math.abs(more) * Number.EPSILON };
    fc.assert(
      fc.property(trials, (before) => sameComparisons(before, change)),
      FEW,
    );
  });

  it("a million million more in every plant changes no sum of squares", () => {
    fc.assert(
      fc.property(trials, (plants) => {
        const far = models(plants.map((plant) => ({ ...plant, value: plant.value + 2 ** 40 })));
        for (const [which, { squares }] of models(plants).entries()) {
          const now = far[which]?.squares ?? expect.fail("no model");
          const absolute = 1e-11 * (squares.residual.sumOfSquares + squares.treatments.sumOfSquares);
          near("treatments", now.treatments.sumOfSquares, squares.treatments.sumOfSquares, {
            relative: 1e-9,
            absolute,
          });
          near("residual", now.residual.sumOfSquares, squares.residual.sumOfSquares, { relative: 1e-9, absolute });
          near("beds", now.beds?.sumOfSquares ?? 0, squares.beds?.sumOfSquares ?? 0, { relative: 1e-9, absolute });
        }
      }),
    );
  });

  it.each([1 / 1024, 0.1, 1e9, -1])("amounts %d times as large make differences so many times as large", (times) => {
    const change = { plants: (plant: PlantInModel) => ({ ...plant, value: plant.value * times }), times };
    fc.assert(
      fc.property(trials, (plants) => sameComparisons(plants, change)),
      FEW,
    );
  });

  it("a bed that is richer by any amount changes no comparison within beds", () => {
    fc.assert(
      fc.property(trials, fc.integer({ min: -500, max: 500 }), (plants, richer) => {
        const moved = plants.map((plant) => ({ ...plant, value: plant.value + (plant.bed === 2 ? richer : 0) }));
        const [old, now] = [modelOf(plants), modelOf(moved)];
        if (old === null || now === null) throw new Error("no model");
        near("mean square", now.meanSquare, old.meanSquare, { relative: 1e-8 });
        near("t", contrast(now, { usual: 0, tried: 1 }).t, contrast(old, { usual: 0, tried: 1 }).t, {
          relative: 1e-7,
          absolute: 1e-8,
        });
      }),
    );
  });

  it("percent ranges do not depend on the unit of the amounts", () => {
    fc.assert(
      fc.property(trials, fc.constantFrom(0.001, 28.349523125), (plants, unit) => {
        const scaled = models(plants.map((plant) => ({ ...plant, value: plant.value * unit }))).map(firstRange);
        for (const [which, one] of models(plants).map(firstRange).entries()) {
          nearRange(scaled[which] ?? expect.fail("no range"), one);
        }
      }),
      FEW,
    );
  });
});

describe("comparisons with their own spreads", () => {
  const two = fc.array(fc.integer({ min: 1, max: 99 }), { minLength: 3, maxLength: 5 });

  it("turned about, a pair has the opposite range and the same p", () => {
    fc.assert(
      fc.property(two, two, (usual, tried) => {
        const [there, back] = [
          ownSpreadPair(summary(usual), summary(tried), 4),
          ownSpreadPair(summary(tried), summary(usual), 4),
        ];
        if (there === null || back === null) return expect(back).toBe(there);
        near("p", back.pValue, there.pValue);
        near("low", back.low, -there.high, { absolute: 1e-9 });
        return near("high", back.high, -there.low, { absolute: 1e-9 });
      }),
      FEW,
    );
  });

  it("Welch's F of two treatments is the square of Welch's t, of any number the same in any order and unit", () => {
    fc.assert(
      fc.property(trials.map(groupsOf), (groups) => {
        const parts = groups.map(summary);
        if (parts.some(({ n, variance }) => n < 2 || !(variance > 0))) return;
        const turned = groups.toReversed().map((group) => summary(group.map((value) => 7 - 0.3 * value)));
        near("F", allTogetherOwnSpread(turned).f, allTogetherOwnSpread(parts).f, { relative: 1e-8, absolute: 1e-10 });
        const [one, other] = parts;
        if (one === undefined || other === undefined) throw new Error("no two groups");
        const t = (one.mean - other.mean) / Math.sqrt(one.variance / one.n + other.variance / other.n);
        near("t squared", allTogetherOwnSpread([one, other]).f, t ** 2, { relative: 1e-8, absolute: 1e-10 });
      }),
    );
  });
});
