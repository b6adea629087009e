import { describe, expect, it } from "vitest";
import { againstUsualTest } from "../../src/methods/againstUsualTest";
import { allPairsTest } from "../../src/methods/allPairsTest";
import { allTogether, allTogetherOwnSpread } from "../../src/methods/allTogether";
import { contrast, type Duo } from "../../src/methods/contrast";
import { modelRatio } from "../../src/methods/modelRatio";
import { oneWayModel } from "../../src/methods/oneWayModel";
import { ownSpreadPair } from "../../src/methods/ownSpreadPair";
import { type PercentRange, percentRange } from "../../src/methods/percentRange";
import type { TreatmentModel } from "../../src/methods/treatmentModel";
import { summary } from "../../src/numerics/moments";
import { near, type Tolerance } from "../near";
import reference from "../reference/manyOneWay.json";
import { nearEnd } from "./nearEnd";
import { printed } from "./printed";
import { errorOfTukeyInR } from "./tukeyInR";

type Known = (typeof reference.cases)[number];
const cases: readonly Known[] = reference.cases;
const known = (name: string): Known => cases.find((one) => one.name === name) ?? expect.fail(`no case ${name}`);

function nearRange(what: string, range: PercentRange, end: Known["dunnett"][number], tolerance: Tolerance = {}): void {
  nearEnd(`${what}, low`, range.low, end.percentLow, tolerance);
  nearEnd(`${what}, high`, range.high, end.percentHigh, tolerance);
}

/** Difference and its range, critical standard errors wide. */
function rangeOf(model: TreatmentModel, duo: Duo, critical: number) {
  const { difference, standardError } = contrast(model, duo);
  return { difference, low: difference - critical * standardError, high: difference + critical * standardError };
}

describe.each(cases)("$name", ({ groups, ...R }) => {
  const model = oneWayModel(groups);

  it("R's aov(): averages, sums of squares, mean square, F and p", () => {
    for (const [at, mean] of R.means.entries()) near(`average ${at}`, model.means[at] ?? 0, mean);
    const { treatments, residual } = model.squares;
    near("treatments", treatments.sumOfSquares, R.ss[0] ?? 0);
    near("residual", residual.sumOfSquares, R.ss[1] ?? 0);
    near("mean square", model.meanSquare, R.mse);
    const { f, df, pValue } = allTogether(model);
    near("F", f, R.f);
    near("p", pValue, R.p);
    expect(df).toEqual([groups.length - 1, R.df]);
  });

  it("R's oneway.test(): Welch's F", () => {
    const { f, df, pValue } = allTogetherOwnSpread(groups.map(summary));
    near("F", f, R.welch.f);
    near("df", df[1], R.welch.df);
    near("p", pValue, R.welch.p);
  });

  it("Dunnett: the integral by R's integrate(), and multcomp as far as its random integration goes", () => {
    const { pValue, critical } = againstUsualTest(model, 0);
    near("critical value", critical, R.critical, { relative: 1e-9 });
    for (const [at, { t, p, multcomp, ...range }] of R.dunnett.entries()) {
      const duo = { usual: 0, tried: at + 1 };
      const found = contrast(model, duo).t;
      near(`t ${at}`, found, t);
      near(`p ${at}`, pValue(found), p, { absolute: 1e-9 });
      near(`multcomp's p ${at}`, pValue(found), multcomp, { absolute: 1e-5 });
      const percent = percentRange(modelRatio(model, duo, critical), pValue(found) < 0.05);
      nearRange(`percent ${at}`, percent, { t, p, multcomp, ...range }, { relative: 1e-8, absolute: 1e-9 });
    }
  });

  it("R's TukeyHSD(), within what ptukey() and qtukey() hold", () => {
    const { pValue, critical } = allPairsTest(model);
    const error = errorOfTukeyInR(R.df);
    for (const { one, other, difference, low, high, p } of R.tukey) {
      const duo = { usual: one, tried: other };
      const found = rangeOf(model, duo, critical);
      const reach = { absolute: error.critical * (high - low) };
      near(`difference ${one}-${other}`, found.difference, difference, { relative: 1e-9 });
      near(`low ${one}-${other}`, found.low, low, reach);
      near(`high ${one}-${other}`, found.high, high, reach);
      near(`p ${one}-${other}`, pValue(contrast(model, duo).t), p, { absolute: error.p });
    }
  });

  it("Games–Howell by R's ptukey() and qtukey(), within what they hold", () => {
    const summaries = groups.map(summary);
    for (const { one, other, own } of R.tukey) {
      const [usual, tried] = [summaries[one], summaries[other]];
      if (usual === undefined || tried === undefined) throw new Error("no such group");
      const found = ownSpreadPair(usual, tried, groups.length) ?? expect.fail("no comparison");
      const error = errorOfTukeyInR(own.df);
      const reach = { absolute: error.critical * (own.high - own.low) };
      near(`low ${one}-${other}`, found.low, own.low, reach);
      near(`high ${one}-${other}`, found.high, own.high, reach);
      near(`p ${one}-${other}`, found.pValue, own.p, { absolute: error.p });
    }
  });
});

describe("Games–Howell's percent range is |b − r·a| = q√(V(r)/2) by R's uniroot(), where qtukey() is good to 7 digits", () => {
  it.each(cases.filter(({ name }) => ["ToothGrowth, doses", "warpbreaks, tension", "PlantGrowth"].includes(name)))(
    "$name",
    ({ groups, tukey }) => {
      for (const { one, other, own } of tukey) {
        const [usual, tried] = [summary(groups[one] ?? []), summary(groups[other] ?? [])];
        const found = ownSpreadPair(usual, tried, groups.length) ?? expect.fail("no comparison");
        const range = percentRange(found.curve, found.pValue < 0.05);
        nearEnd(`low ${one}-${other}`, range.low, own.percentLow, { absolute: 2e-6, relative: 2e-6 });
        nearEnd(`high ${one}-${other}`, range.high, own.percentHigh, { absolute: 2e-6, relative: 2e-6 });
      }
    },
  );
});

/** METHODS 10, items 22 to 29: figures that SciPy's tests print from their sources. */
describe("printed figures", () => {
  const pairsOf = (name: string) => {
    const model = oneWayModel(known(name).groups);
    const { pValue, critical } = allPairsTest(model);
    return (usual: number, tried: number) => ({
      ...rangeOf(model, { usual, tried }, critical),
      p: pValue(contrast(model, { usual, tried }).t),
    });
  };

  it("NIST/SEMATECH e-Handbook 7.4.7.1: six ranges; R's F 9.7238 and MSE 1.33075", () => {
    const pair = pairsOf("e-Handbook 7.4.7.1");
    const model = oneWayModel(known("e-Handbook 7.4.7.1").groups);
    printed("F", allTogether(model).f, "9.7238");
    printed("MSE", model.meanSquare, "1.33075");
    for (const [usual, tried, low, high] of [
      [0, 1, "0.29", "4.47"],
      [0, 2, "1.13", "5.31"],
      [3, 0, "-2.25", "1.93"],
      [2, 1, "-2.93", "1.25"],
      [3, 1, "0.13", "4.31"],
      [3, 2, "0.97", "5.15"],
    ] as const) {
      printed("low", pair(usual, tried).low, low);
      printed("high", pair(usual, tried).high, high);
    }
  });

  it.each([
    ["pain relief, five each", 1, 0, -8.2491590248597, -0.9508409751403, 0.0144483269098],
    ["pain relief, five each", 2, 0, -3.9091590248597, 3.3891590248597, 0.98031072409],
    ["pain relief, five each", 2, 1, 0.6908409751403, 7.9891590248597, 0.0203311368795],
    ["pain relief, eight and five", 1, 0, -7.02207069748501, -0.267929302515, 0.0337149844308],
    ["pain relief, eight and five", 2, 0, -2.682070697485, 4.072070697485, 0.85572267328807],
    ["pain relief, eight and five", 2, 1, 0.5934764428772, 8.08652355712281, 0.0225904702062],
  ] as const)("Tukey, %s: %d − %d", (...row) => {
    const [name, usual, tried, low, high, p] = row;
    const found = pairsOf(name)(usual, tried);
    near("low", found.low, low, { absolute: 1e-6 });
    near("high", found.high, high, { absolute: 1e-6 });
    near("p", found.p, p, { absolute: 1e-7 });
  });

  it.each([
    [0, 1, "0.0384598"],
    [0, 2, "0.0014315"],
    [1, 2, "0.4630831"],
  ] as const)("warpbreaks, tension: %d and %d differ with p %s", (usual, tried, p) => {
    printed("p", pairsOf("warpbreaks, tension")(usual, tried).p, p);
  });

  it.each([
    ["blood counts", 1, "0.85703", 0.620102],
    ["blood counts", 2, "3.69375", 0.0058254],
    ["three a group", 1, "3.09073", 0.036407],
    ["three a group", 2, "0.56195", 0.896539],
    ["three a group", 3, "-1.40488", 0.409295],
    ["mucociliary half-times", 1, "0.90875", 0.58317],
    ["mucociliary half-times", 2, "-0.05007", 0.99819],
  ] as const)("Dunnett, %s, %d: t %s, p %d", (name, tried, t, p) => {
    const model = oneWayModel(known(name).groups);
    const found = contrast(model, { usual: 0, tried }).t;
    printed("t", found, t);
    // printed from a random integration: the exact .036622 of "three a group" (R's integral and multcomp, above) is .036407
    near("p", againstUsualTest(model, 0).pValue(found), p, { absolute: 5e-4 });
  });

  it.each([
    [1, -1.2564116462124, 2.5564116462124],
    [2, 0.8396273539789, 4.4163726460211],
  ] as const)("Dunnett (1955), blood counts, range %d: %d to %d", (tried, low, high) => {
    const model = oneWayModel(known("blood counts").groups);
    const found = rangeOf(model, { usual: 0, tried }, againstUsualTest(model, 0).critical);
    // printed from a random integration too
    near("low", found.low, low, { absolute: 5e-4 });
    near("high", found.high, high, { absolute: 5e-4 });
  });

  it("PlantGrowth: F 4.8461, p .01591, Tukey .3908711, .1979960, .0120064, Dunnett .3227, .1535", () => {
    const model = oneWayModel(known("PlantGrowth").groups);
    printed("F", allTogether(model).f, "4.8461");
    printed("p", allTogether(model).pValue, "0.01591");
    const pair = pairsOf("PlantGrowth");
    printed("trt1 − ctrl", pair(0, 1).p, "0.3908711");
    printed("trt2 − ctrl", pair(0, 2).p, "0.1979960");
    printed("trt2 − trt1", pair(1, 2).p, "0.0120064");
    const { pValue } = againstUsualTest(model, 0);
    printed("trt1", pValue(contrast(model, { usual: 0, tried: 1 }).t), "0.3227");
    printed("trt2", pValue(contrast(model, { usual: 0, tried: 2 }).t), "0.1535");
  });

  it("Games–Howell's third pair: −13.75, −74.32 to 46.82, p .683", () => {
    const [, one, other] = known("Games-Howell example").groups.map(summary);
    if (one === undefined || other === undefined) throw new Error("no such group");
    const found = ownSpreadPair(other, one, 3) ?? expect.fail("no comparison");
    near("difference", found.difference, -13.75);
    // the printed figures carry R's qtukey() and ptukey() at 3.2 degrees of freedom
    near("low", found.low, -74.3174374251372, { relative: 2e-4 });
    near("high", found.high, 46.8174374251372, { relative: 2e-4 });
    near("p", found.pValue, 0.682983914946841, { absolute: 2e-4 });
  });
});
