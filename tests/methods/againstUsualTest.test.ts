import { describe, expect, it } from "vitest";
import { againstUsualTest } from "../../src/methods/againstUsualTest";
import { contrast } from "../../src/methods/contrast";
import { near } from "../near";
import { manyCases, modelOf } from "./manyCases";

describe("againstUsualTest agrees with Dunnett's integral worked out in R", () => {
  it.each(manyCases)("$name", (known) => {
    const model = modelOf(known);
    const { pValue, critical, isBelow } = againstUsualTest(model, 0);
    near("critical value", critical, known.dunnettCritical, { relative: 1e-8 });
    for (const [at, t] of [known.t].flat().entries()) {
      const found = contrast(model, { usual: 0, tried: at + 1 }).t;
      near(`t ${at + 1}`, found, t, { relative: 1e-9 });
      const p = [known.dunnettP].flat()[at] ?? 0;
      near(`p ${at + 1}`, pValue(found), p, { absolute: 1e-9 });
      expect([p - 1e-9, p + 1e-9].map((level) => isBelow(found, level))).toEqual([false, true]);
    }
  });
});

it("Marlpit Corner in beds: the p-values of METHODS section 11 (multcomp's exact integral within 5e-4)", () => {
  const known = manyCases.find(({ name }) => name === "Marlpit Corner in beds");
  if (known === undefined) throw new Error("no such case");
  const model = modelOf(known);
  const { pValue } = againstUsualTest(model, 0);
  const found = [1, 2, 3].map((tried) => pValue(contrast(model, { usual: 0, tried }).t));
  for (const [at, p] of [0.0031717, 0.997472, 0.6629857].entries()) near("p", found[at] ?? 0, p, { absolute: 5e-4 });
});

it("any treatment may be the usual", () => {
  const model = modelOf(manyCases[0] ?? expect.fail("no case"));
  expect(againstUsualTest(model, 1).pValue(contrast(model, { usual: 1, tried: 2 }).t)).toBeLessThan(0.01);
});
