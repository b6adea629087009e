import { describe, expect, it } from "vitest";
import { near, type Tolerance } from "../near";
import handbook from "../reference/handbook.json";
import { cell, number } from "./call";
import { mulch } from "./demo";

const facts = handbook.cases;

/** Checks labels of one comparison against published figures. */
function expectFigures(
  call: readonly unknown[],
  figures: Readonly<Record<string, number>>,
  tolerance: Tolerance,
): void {
  const [usual, tried, how] = call;
  for (const [label, value] of Object.entries(figures)) {
    near(label, number("COMPARETWO", usual, tried, label, how), value, tolerance);
  }
}

it("Student's sleep data in pairs (METHODS 10, 5; the source takes A − B)", () => {
  const { inputs, expect: published, tolerance } = facts.sleepPaired;
  const figures = { Difference: 1.58, t: -published.t_A_minus_B, df: 9, "p value": published.p };
  const range = { "Difference low": -published.high, "Difference high": -published.low };
  expectFigures([inputs.A, inputs.B, "pairs"], { ...figures, ...range }, { absolute: tolerance });
});

it("Student's sleep data as separate plants (6)", () => {
  const { inputs, expect: published, tolerance } = facts.sleepWelch;
  const range = { "Difference low": -published.high, "Difference high": -published.low };
  const figures = { t: -published.t, df: published.df, "p value": published.p, ...range };
  expectFigures([inputs.A, inputs.B], figures, { relative: tolerance });
  expectFigures(
    [inputs.A, inputs.B, "equal unevenness"],
    { df: 18, "p value": published.student_p },
    { absolute: 1e-8 },
  );
});

it("Darwin's maize: paired t, all 32 768 sign flips, percent (7, 8, 17)", () => {
  const { inputs, expect: published, tolerance } = facts.darwinPaired;
  const call = [inputs.usual_self, inputs.new_cross, "pairs"];
  const flips = (2 * published.flips_ge) / published.flips_total;
  const test = { t: published.t, df: published.df, "p value": published.p, Difference: published.mean };
  const range = { "Difference low": published.low, "Difference high": published.high };
  expectFigures(call, { ...test, ...range }, { relative: tolerance });
  expectFigures(call, { "Label-swap p": flips }, { absolute: 0 });
  const percents = {
    Change: published.percent,
    "Change low": published.percent_low,
    "Change high": published.percent_high,
  };
  for (const [label, value] of Object.entries(percents)) {
    near(label, 100 * number("COMPARETWO", ...call.slice(0, 2), label, "pairs"), value, { absolute: tolerance });
  }
  expect(cell("COMPARETWO", ...call.slice(0, 2), "Method", "pairs")).toMatch(/exact.*32 768/);
});

it("Darwin's maize wrongly unpaired (9)", () => {
  const { inputs } = facts.darwinPaired;
  const { t, df, p } = facts.darwinUnpaired.expect;
  expectFigures([inputs.usual_self, inputs.new_cross], { t, df, "p value": p }, { relative: 1e-6 });
});

it("boys' shoes: paired, 14 of 1024 flips, unpaired (10)", () => {
  const { inputs, expect: published } = facts.shoesPaired;
  const range = { "Difference low": published.low, "Difference high": published.high };
  expectFigures([inputs.A, inputs.B, "pairs"], { t: published.t, df: 9, ...range }, { absolute: 5e-6 });
  expectFigures([inputs.A, inputs.B, "pairs"], { "p value": published.p }, { absolute: 1e-7 });
  expectFigures([inputs.A, inputs.B, "pairs"], { "Label-swap p": 14 / 1024 }, { absolute: 0 });
  expectFigures([inputs.A, inputs.B], { "p value": published.welch_unpaired_p }, { absolute: 5e-5 });
});

it("eleven plants: Student, 305 of 462 splits (11; data remembered, figures by R)", () => {
  const { inputs, expect: byR } = facts.bhh11plants;
  const call = [inputs.A, inputs.B, "equal unevenness"];
  expectFigures(call, { Difference: byR.diff, t: byR.student_t, df: 9, "p value": byR.p }, { absolute: 5e-6 });
  expectFigures(call, { "Label-swap p": byR.splits_two_sided / byR.splits_total }, { absolute: 0 });
});

/** Five numbers with the average and variance that a source prints instead of its data. */
function fiveWith(mean: number, variance: number): readonly number[] {
  return [-1, -1, 0, 1, 1].map((step) => mean + step * Math.sqrt(variance));
}

it("published summaries: manure, ten plots, maize on farm (12 to 14)", () => {
  const { means, vars } = facts.summaryManure.inputs;
  const [before, after] = [1, 0].map((at) => fiveWith(means[at] ?? 0, vars[at] ?? 0));
  const manure = facts.summaryManure.expect;
  const call = [before, after, "equal unevenness"];
  expectFigures(call, { t: manure.t, df: manure.df }, { relative: 1e-9 });
  expectFigures(call, { "p value": manure.p_two }, { absolute: 5e-11 });

  const plots = facts.tenPlots;
  const steps = [-1, -1, -1, -1, -1, 1, 1, 1, 1, 1].map((step) => step * plots.sd * Math.sqrt(0.9));
  const pairs = [steps.map(() => 5), steps.map((step) => 5 + plots.mean + step), "pairs"];
  expectFigures(pairs, { t: plots.expect.t }, { absolute: 5e-4 });
  expectFigures(pairs, { "p value": 2 * plots.expect.pOneSided }, { absolute: 1e-4 });

  const { means: maize, sdDifference, expect: published } = facts.maize;
  const groups = maize.map((mean) => [mean - sdDifference / Math.SQRT2, mean + sdDifference / Math.SQRT2]);
  expectFigures([...groups, "equal unevenness"], { t: published.t, df: 2 }, { absolute: 1e-3 });
  expectFigures([...groups, "equal unevenness"], { "p value": published.p }, { absolute: 5e-5 });
});

it.each([
  ["trt2 (15)", facts.plantgrowthTwo],
  ["trt1 (15)", facts.plantgrowthTrt1],
  ["insects D v C, all 2 704 156 splits (16)", facts.insectsDvC],
] as const)("PlantGrowth and InsectSprays: %s", (_name, { inputs, expect: byR }) => {
  const call = [inputs.usual, inputs.new];
  const percents = { Change: byR.percent, "Change low": byR.percent_low, "Change high": byR.percent_high };
  for (const [label, value] of Object.entries(percents)) {
    near(label, 100 * number("COMPARETWO", ...call, label), value, { absolute: 1e-8 });
  }
  near("label swap", number("COMPARETWO", ...call, "Label-swap p"), byR.shuffle_p, { absolute: 1e-9 });
  if ("t" in byR) expectFigures(call, { t: byR.t, df: byR.df, "p value": byR.p }, { relative: 1e-6 });
});

it("two and three plants each (18)", () => {
  const two = facts.tiny2;
  const call = [two.inputs.usual, two.inputs.new];
  expectFigures(call, { t: two.expect.t, df: two.expect.df, "p value": two.expect.p, Change: 2 }, { absolute: 5e-7 });
  expectFigures(call, { "Label-swap p": 1 / 3 }, { relative: 1e-15 });
  expect(cell("COMPARETWO", ...call, "Change high")).toBe("no upper limit");
  expect(cell("COMPARETWO", ...call)).toBe("Too few plants");
  const three = facts.tiny3;
  const more = [three.inputs.usual, three.inputs.new];
  expectFigures(more, { t: three.expect.t, df: three.expect.df, "p value": three.expect.p }, { absolute: 5e-7 });
  expectFigures(more, { "Label-swap p": 0.1 }, { relative: 1e-15 });
  near("low", 100 * number("COMPARETWO", ...more, "Change low"), three.expect.percent_low, { absolute: 1e-8 });
  near("high", 100 * number("COMPARETWO", ...more, "Change high"), three.expect.percent_high, { absolute: 1e-8 });
  expect(cell("COMPARETWO", ...more)).toBe("Leaning up, too few plants");
});

it("the smallest label-swap p of so many plants each, and of so many pairs (19)", () => {
  const { inputs, expect: smallest } = facts.minShuffle;
  for (const [index, plants] of inputs.n_each.entries()) {
    const low = Array.from({ length: plants }, (_, plant) => 1 + plant / 10);
    const high = low.map((value) => value + 10);
    near(`${plants} each`, number("COMPARETWO", low, high, "Label-swap p"), smallest[index] ?? 0, { relative: 1e-14 });
    near(`${plants} pairs`, number("COMPARETWO", low, high, "Label-swap p", "pairs"), 2 / 2 ** plants, { absolute: 0 });
  }
});

it("rank tests of Hollander & Wolfe (20)", () => {
  const { inputs, expect: published } = facts.ranks1;
  expectFigures([inputs.y, inputs.x, "ranks"], { t: published.W }, { absolute: 0 });
  expectFigures([inputs.y, inputs.x, "ranks"], { "p value": published.p_two }, { absolute: 1e-7 });
  const paired = facts.ranks2;
  const call = [paired.inputs.y, paired.inputs.x, "pairs ranks"];
  expectFigures(call, { t: paired.expect.V }, { absolute: 0 });
  expectFigures(call, { "p value": 2 * paired.expect.p_greater }, { relative: 1e-12 });
});

describe("Marlpit Corner: straw against bare soil (METHODS 11)", () => {
  const { expect: byR } = facts.demoTwo;
  const call = [mulch("Bare soil"), mulch("Straw")];

  it("as separate plants: not settled", () => {
    expectFigures(call, { t: byR.welch_t, df: byR.df, "p value": byR.p }, { relative: 1e-9 });
    expectFigures(call, { "Label-swap p": byR.shuffle_p }, { absolute: 5e-11 });
    for (const [index, label] of ["Change", "Change low", "Change high"].entries()) {
      near(label, 100 * number("COMPARETWO", ...call, label), byR.percent[index] ?? 0, { absolute: 1e-8 });
    }
    expect(cell("COMPARETWO", ...call)).toBe("Not settled, may be up");
  });

  it("in beds: up, and enough to matter", () => {
    const figures = { t: byR.paired_t, "p value": byR.paired_p, "Label-swap p": byR.flip_p, df: 6 };
    expectFigures([...call, "beds"], figures, { relative: 1e-8 });
    for (const [index, label] of ["Change", "Change low", "Change high"].entries()) {
      near(label, 100 * number("COMPARETWO", ...call, label, "beds"), byR.paired_percent[index] ?? 0, {
        absolute: 5e-7,
      });
    }
    expect(cell("COMPARETWO", ...call, null, "beds")).toBe("Up, enough to matter");
    expect(cell("COMPARETWO", ...call, "Method", "beds")).toContain("1 incomplete bed left out");
    expect(cell("COMPARETWO", ...call, "Lost, new", "beds")).toBe(1);
    expect(cell("COMPARETWO", ...call, "Plants, usual", "beds")).toBe(7);
  });

  it("counting the slug death as zero turns grass from +13 % to −1.4 %", () => {
    const grass = [mulch("Bare soil"), mulch("Grass clippings")];
    expect(Math.round(100 * number("COMPARETWO", ...grass, "Change"))).toBe(13);
    const asZero = number("COMPARETWO", ...grass, "Average, new", null, null, null, "count as zero");
    near("average", asZero, facts.demoMulches.grassLostAsZero, { absolute: 0.05 });
    near("change", number("COMPARETWO", ...grass, "Change", null, null, null, "count as zero"), -0.014, {
      absolute: 5e-4,
    });
  });
});
