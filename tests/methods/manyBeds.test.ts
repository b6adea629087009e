import { describe, expect, it } from "vitest";
import { additiveModel } from "../../src/methods/additiveModel";
import { againstUsualTest } from "../../src/methods/againstUsualTest";
import { allPairsTest } from "../../src/methods/allPairsTest";
import { connectedTreatments } from "../../src/methods/connectedTreatments";
import { contrast } from "../../src/methods/contrast";
import { modelRatio } from "../../src/methods/modelRatio";
import { percentRange } from "../../src/methods/percentRange";
import { near } from "../near";
import reference from "../reference/manyBeds.json";
import { plantsModel, plantsOf } from "./manyRows";
import { nearEnd } from "./nearEnd";
import { printed } from "./printed";
import { errorOfTukeyInR } from "./tukeyInR";

const cases = reference.cases;
const known = (name: string) => cases.find((one) => one.name === name) ?? expect.fail(`no case ${name}`);

describe.each(cases)("$name", (R) => {
  const model = plantsModel(R);

  it("R's lm(y ~ bed + treatment): averages over all beds, mean square, share of the beds", () => {
    for (const [at, mean] of R.means.entries()) near(`average ${at}`, model.means[at] ?? 0, mean);
    near("mean square", model.meanSquare, R.mse);
    near("bed share", model.bedShare, R.bedShare, { relative: 1e-9 });
    expect(model.df).toBe(R.df);
  });

  it("Dunnett with the average correlation by R's integrate(), and the percent ranges by uniroot()", () => {
    const { pValue, critical } = againstUsualTest(model, 0);
    near("critical value", critical, R.critical, { relative: 1e-9 });
    for (const [at, { t, p, percentLow, percentHigh }] of R.dunnett.entries()) {
      const duo = { usual: 0, tried: at + 1 };
      const found = contrast(model, duo).t;
      near(`t ${at}`, found, t, { relative: 1e-9 });
      near(`p ${at}`, pValue(found), p, { absolute: 1e-9 });
      const range = percentRange(modelRatio(model, duo, critical), pValue(found) < 0.05);
      nearEnd(`low ${at}`, range.low, percentLow, { relative: 1e-8, absolute: 1e-9 });
      nearEnd(`high ${at}`, range.high, percentHigh, { relative: 1e-8, absolute: 1e-9 });
    }
  });

  it("Tukey: q = √2·|difference| over its standard error, within what ptukey() and qtukey() hold", () => {
    const { pValue, critical } = allPairsTest(model);
    const error = errorOfTukeyInR(R.df);
    for (const { one, other, difference, low, high, p } of R.tukey) {
      const found = contrast(model, { usual: one, tried: other });
      const reach = { absolute: error.critical * (high - low) };
      near(`difference ${one}-${other}`, found.difference, difference, { relative: 1e-9, absolute: 1e-12 });
      near(`low ${one}-${other}`, found.difference - critical * found.standardError, low, reach);
      near(`high ${one}-${other}`, found.difference + critical * found.standardError, high, reach);
      near(`p ${one}-${other}`, pValue(found.t), p, { absolute: error.p });
    }
  });
});

describe("Marlpit Corner, METHODS section 11 [R], to the digits shown", () => {
  const model = plantsModel(known("demo"));
  const { pValue, critical } = againstUsualTest(model, 0);

  it("averages, mean square, critical value", () => {
    for (const [at, shown] of ["3018.4", "4392.2", "3071.1", "3365.8"].entries())
      printed(`average ${at}`, model.means[at] ?? 0, shown);
    printed("mean square", model.meanSquare, "473107.5");
    printed("K", critical, "2.558231");
    expect(model.df).toBe(19);
  });

  it.each([
    [1, "1373.8", "0.0032449", "13.04", "95.00"],
    [2, "52.8", "0.99747", "-24.50", "37.51"],
    [3, "347.4", "0.66304", "-16.94", "51.15"],
  ] as const)("mulch %d: difference %s, p %s, from %s to %s %", (...row) => {
    const [tried, difference, p, percentLow, percentHigh] = row;
    const found = contrast(model, { usual: 0, tried });
    printed("difference", found.difference, difference);
    printed("p", pValue(found.t), p);
    const range = percentRange(modelRatio(model, { usual: 0, tried }, critical), pValue(found.t) < 0.05);
    printed("percent, low", 100 * Number(range.low), percentLow);
    printed("percent, high", 100 * Number(range.high), percentHigh);
  });

  // woodchip's and grass clippings' ranges are shown with multcomp's exact K = 2.558938 only
  it.each([
    [1, critical, "453.00", "2294.69"],
    [1, 2.558938, "452.7", "2294.9"],
    [2, 2.558938, "-827.3", "932.8"],
    [3, 2.558938, "-573.7", "1268.5"],
  ] as const)("mulch %d, K = %d: from %s to %s g", (tried, wide, low, high) => {
    const { difference, standardError } = contrast(model, { usual: 0, tried });
    printed("low", difference - wide * standardError, low);
    printed("high", difference + wide * standardError, high);
  });

  // one planned look: Student's t with 19 degrees of freedom
  it.each([
    [1, "18.24", "83.87"],
    [2, "-20.07", "29.76"],
    [3, "-12.19", "42.49"],
  ] as const)("mulch %d, one planned look: from %s to %s %", (tried, low, high) => {
    const differs = Math.abs(contrast(model, { usual: 0, tried }).t) > 2.0930240544;
    const range = percentRange(modelRatio(model, { usual: 0, tried }, 2.0930240544), differs);
    printed("low", 100 * Number(range.low), low);
    printed("high", 100 * Number(range.high), high);
  });

  it("multcomp's exact multivariate t, whose correlations are not averaged, within 5e-4", () => {
    for (const [at, p] of [0.0031717, 0.997472, 0.6629857].entries())
      near(`p ${at}`, pValue(contrast(model, { usual: 0, tried: at + 1 }).t), p, { absolute: 5e-4 });
  });
});

describe("designs that cannot be told apart", () => {
  // npk confounds the triple interaction with its blocks (R's help): each block holds half of the eight combinations
  it("npk's eight combinations: two halves that share no block, and no model", () => {
    const halves = [0, 0, 1, 1, 0, 1];
    const combinations = [
      [0, 3, 5, 6],
      [1, 2, 4, 7],
    ];
    const plants = halves.flatMap((half, bed) =>
      (combinations[half] ?? []).map((treatment, at) => ({ value: 50 + at + bed, treatment, bed })),
    );
    expect(connectedTreatments(plants)).toEqual(combinations);
    expect(additiveModel(plants)).toBeNull();
  });

  it("a bed with one plant changes no difference, standard error or residual", () => {
    const rice = known("rice without three plots");
    const more = [...plantsOf(rice), { value: 9999, treatment: 2, bed: 4 }];
    const [before, after] = [plantsModel(rice), additiveModel(more) ?? expect.fail("no model")];
    near("mean square", after.meanSquare, before.meanSquare);
    expect(after.df).toBe(before.df);
    for (const tried of [1, 2, 3, 4, 5]) {
      const [one, other] = [before, after].map((model) => contrast(model, { usual: 0, tried }));
      near("difference", other?.difference ?? 0, one?.difference ?? 0, { relative: 1e-9 });
      near("standard error", other?.standardError ?? 0, one?.standardError ?? 0, { relative: 1e-9 });
    }
  });
});
