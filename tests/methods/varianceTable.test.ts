import { describe, expect, it } from "vitest";
import { againstUsualTest } from "../../src/methods/againstUsualTest";
import { contrast } from "../../src/methods/contrast";
import type { SquaresOf, TreatmentModel } from "../../src/methods/treatmentModel";
import { leastSignificantDifference, treatmentF } from "../../src/methods/varianceTable";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import reference from "../reference/manyBeds.json";
import { manyCases, modelOf } from "./manyCases";
import { plantsModel } from "./manyRows";
import { printed } from "./printed";

const whole = (name: string) => reference.cases.find((known) => known.name === name) ?? expect.fail(`no case ${name}`);

describe("F and p of beds and of treatments agree with R's anova(), beds first", () => {
  it.each(reference.cases)("$name", (known) => {
    const model = plantsModel(known);
    const { beds, treatments, residual } = model.squares;
    const sources = [beds ?? expect.fail("no beds"), treatments];
    for (const [at, source] of sources.entries()) {
      const { f, p } = treatmentF(model, source);
      near(`F ${at}`, f, known.f[at] ?? Number.NaN);
      near(`p ${at}`, p, known.p[at] ?? Number.NaN, { relative: 1e-9 });
    }
    for (const [at, source] of [...sources, residual].entries())
      near(`sum of squares ${at}`, source.sumOfSquares, known.ss[at] ?? Number.NaN);
  });
});

it("Gomez & Gomez (1984), p. 26, print F 2.17 for treatments, CV 6.7 %; R has F 5.86 for beds, LSD 501", () => {
  const rice = whole("rice");
  const model = plantsModel(rice);
  const average = rice.value.reduce((sum, value) => sum + value, 0) / rice.value.length;
  printed("treatments", treatmentF(model, model.squares.treatments).f, "2.17");
  printed("p", treatmentF(model, model.squares.treatments).p, "0.1128");
  printed("beds", treatmentF(model, model.squares.beds ?? expect.fail()).f, "5.86");
  printed("MSE", model.meanSquare, "110558");
  printed("CV", (100 * Math.sqrt(model.meanSquare)) / average, "6.7");
  printed("LSD", leastSignificantDifference(model) ?? Number.NaN, "501");
});

it("Gomez & Gomez (1984), p. 300, larvae as log(x + 1): F 3.651 for beds, 5.6995 for treatments", () => {
  const model = plantsModel(whole("larvae, logarithms"));
  const [beds, treatments] = [model.squares.beds ?? expect.fail(), model.squares.treatments].map((source) =>
    treatmentF(model, source),
  );
  printed("beds", beds?.f ?? 0, "3.651");
  printed("beds, p", beds?.p ?? 0, "0.02672");
  printed("treatments", treatments?.f ?? 0, "5.6995");
  printed("treatments, p", treatments?.p ?? 0, "0.000409");
});

it("four crops in five beds, a student's practical: averages 34.2, 35, 33.6, 28.4; R has F 18.17 and, for beds, 2.207", () => {
  const crops = whole("four crops in five beds");
  const model = plantsModel(crops);
  for (const [at, [average, variance]] of [
    ["34.2", "3.7"],
    ["35.0", "2.5"],
    ["33.6", "4.3"],
    ["28.4", "2.3"],
  ].entries()) {
    const values = crops.value.filter((_, row) => crops.treatment[row] === at);
    printed("average", model.means[at] ?? Number.NaN, average ?? "");
    printed("variance", summary(values).variance, variance ?? "");
  }
  const [beds, treatments] = [model.squares.beds ?? expect.fail(), model.squares.treatments].map((source) =>
    treatmentF(model, source),
  );
  printed("treatments", treatments?.f ?? 0, "18.17");
  printed("treatments, p", treatments?.p ?? 0, "0.0000930");
  printed("beds", beds?.f ?? 0, "2.207");
  printed("beds, p", beds?.p ?? 0, "0.1296");
});

it("Marlpit Corner: R has F 4.107 for beds, 6.078 for treatments; 3.151 with the beds left aside", () => {
  const model = plantsModel(whole("demo"));
  const beds = treatmentF(model, model.squares.beds ?? expect.fail());
  const treatments = treatmentF(model, model.squares.treatments);
  printed("beds", beds.f, "4.107");
  printed("beds, p", beds.p, "0.00661");
  printed("treatments", treatments.f, "6.078");
  printed("treatments, p", treatments.p, "0.00444");
  const aside = modelOf(manyCases.find(({ name }) => name === "Marlpit Corner") ?? expect.fail("no case"));
  const apart = treatmentF(aside, aside.squares.treatments);
  printed("beds aside", apart.f, "3.151");
  printed("beds aside, p", apart.p, "0.0418");
  const { t } = contrast(aside, { usual: 0, tried: 1 });
  // METHODS prints multcomp's, from a random integration
  near("Dunnett, straw", againstUsualTest(aside, 0).pValue(t), 0.029, { absolute: 5e-4 });
});

/** A model of separate plants of which only the sums of squares and the numbers of plants are known. */
function fromSquares(residual: SquaresOf, treatments: SquaresOf, counts: readonly number[] = []): TreatmentModel {
  const meanSquare = residual.sumOfSquares / residual.df;
  const squares = { beds: null, treatments, residual };
  const unscaledCovariance = counts.map((n, row) => counts.map((_, column) => (row === column ? 1 / n : 0)));
  return { means: [], counts, unscaledCovariance, meanSquare, df: residual.df, squares, bedShare: 0 };
}

it("Hildebrand & Poey (1985), maize: treatments 4.27, error .89, 3 df each give F 4.80, R p .115", () => {
  const treatments = { sumOfSquares: 4.27, df: 3 };
  const { f, p } = treatmentF(fromSquares({ sumOfSquares: 0.89, df: 3 }, treatments), treatments);
  printed("F", f, "4.80");
  printed("p", p, "0.115");
});

it("potatoes, six a treatment: mean squares 49636 and 3640 give F 13.6, p < .001 and, by R, LSD 71.1", () => {
  const treatments = { sumOfSquares: 49636 * 5, df: 5 };
  const model = fromSquares({ sumOfSquares: 3640 * 30, df: 30 }, treatments, [6, 6, 6, 6, 6, 6]);
  const { f, p } = treatmentF(model, treatments);
  near("F", f, 13.63, { absolute: 0.0101 });
  expect(p).toBeLessThan(0.001);
  printed("LSD", leastSignificantDifference(model) ?? 0, "71.1");
});

describe("the least significant difference agrees with R in balanced trials, and is not given elsewhere", () => {
  it.each(reference.cases)("$name", (known) => {
    const found = leastSignificantDifference(plantsModel(known));
    if (known.lsd === null || found === null) expect(found).toBe(known.lsd);
    else near("LSD", found, known.lsd);
  });
});

it("without residual degrees of freedom there is neither F nor LSD", () => {
  const treatments = { sumOfSquares: 2, df: 1 };
  const model = { ...fromSquares({ sumOfSquares: 0, df: 0 }, treatments, [1, 1]), meanSquare: Number.NaN };
  expect(treatmentF(model, treatments)).toEqual({ f: Number.NaN, p: Number.NaN });
  expect(leastSignificantDifference(model)).toBeNull();
});

it("the rice trial of Gomez & Gomez (1984), p. 26: LSD 501.14, treatments F 2.168, beds F 5.862 (R)", () => {
  const model = modelOf(manyCases.find(({ name }) => name === "Gomez rice in beds") ?? expect.fail("no case"));
  near("LSD", leastSignificantDifference(model) ?? 0, 501.1364051, { relative: 1e-9 });
  near("treatments", treatmentF(model, model.squares.treatments).f, 2.16778, { absolute: 0.000005 });
  near("beds", treatmentF(model, model.squares.beds ?? expect.fail("no beds")).f, 5.86224, { absolute: 0.000005 });
});

it("unequal numbers have no one least significant difference", () => {
  const model = modelOf(manyCases.find(({ name }) => name === "unequal numbers") ?? expect.fail("no case"));
  expect(leastSignificantDifference(model)).toBeNull();
});

it("equal numbers in beds that lack different treatments have no one least significant difference", () => {
  const model = plantsModel(whole("rice, equal numbers in incomplete beds"));
  expect(new Set(model.counts)).toEqual(new Set([3]));
  expect(leastSignificantDifference(model)).toBeNull();
});

it("unequal thousands of plants have none either, small as all their variances are", () => {
  const treatments = { sumOfSquares: 2, df: 1 };
  const model = fromSquares({ sumOfSquares: 149_998, df: 149_998 }, treatments, [100_000, 50_000]);
  expect(leastSignificantDifference(model)).toBeNull();
});
