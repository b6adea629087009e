import { expect, it } from "vitest";
import { againstUsualTest } from "../../src/methods/againstUsualTest";
import { contrast } from "../../src/methods/contrast";
import { modelRatio } from "../../src/methods/modelRatio";
import { percentRange } from "../../src/methods/percentRange";
import { near } from "../near";
import { manyCases, modelOf } from "./manyCases";

/** METHODS section 11 (R): percent against bare soil, adjusted for beds, Dunnett-wide. */
it.each([
  [1, 0.1304, 0.95],
  [2, -0.245, 0.3751],
  [3, -0.1694, 0.5115],
])("Marlpit Corner in beds, mulch %d: from %d to %d", (tried, low, high) => {
  const model = modelOf(manyCases.find(({ name }) => name === "Marlpit Corner in beds") ?? expect.fail("no case"));
  const { critical, pValue } = againstUsualTest(model, 0);
  const differs = pValue(contrast(model, { usual: 0, tried }).t) < 0.05;
  const range = percentRange(modelRatio(model, { usual: 0, tried }, critical), differs);
  near("low", Number(range.low), low, { absolute: 0.000051 });
  near("high", Number(range.high), high, { absolute: 0.000051 });
});

it.each(manyCases)("$name: excludes no change exactly when Dunnett's p is below 5 %", (known) => {
  const model = modelOf(known);
  const { critical, pValue } = againstUsualTest(model, 0);
  for (const tried of model.means.keys()) {
    if (tried === 0) continue;
    const excluded = modelRatio(model, { usual: 0, tried }, critical).excludes(1);
    expect(excluded).toBe(pValue(contrast(model, { usual: 0, tried }).t) < 0.05);
  }
});

// Fieller's g = critical² · V(usual average)/(usual average)²; separate plants have V = MSE/n (R's lm())
it.each(manyCases.filter(({ beds }) => !beds))(
  "$name: g is the squared relative reach of the usual average",
  (known) => {
    const plants = known.treatment.filter((treatment) => treatment === 0).length;
    const reach = (2 * Math.sqrt(known.mse / plants)) / (known.means[0] ?? 0);
    near("g", modelRatio(modelOf(known), { usual: 0, tried: 1 }, 2).g, reach ** 2);
  },
);
