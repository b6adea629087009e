import { describe, expect, it } from "vitest";
import { oneWayModel } from "../../src/methods/oneWayModel";
import { near } from "../near";
import { manyCases, modelOf } from "./manyCases";

describe("oneWayModel agrees with R's lm() and aov()", () => {
  it.each(manyCases.filter(({ beds }) => !beds))("$name", (known) => {
    const { means, meanSquare, df, squares } = modelOf(known);
    for (const [at, mean] of known.means.entries()) near(`average ${at}`, means[at] ?? 0, mean);
    near("mean square", meanSquare, known.mse);
    near("treatments", squares.treatments.sumOfSquares, known.ssTreatments);
    expect(df).toBe(known.df);
  });
});

it("one plant each leaves no degree of freedom and no spread", () => {
  const { df, meanSquare, means } = oneWayModel([[3], [5]]);
  expect({ df, meanSquare, means }).toEqual({ df: 0, meanSquare: Number.NaN, means: [3, 5] });
});

it("values far from zero keep their digits: NIST's small, lower and higher difficulty alike", () => {
  const near0 = oneWayModel([
    [0.4, 0.3, 0.5],
    [0.6, 0.7, 0.5],
  ]);
  const far = oneWayModel([
    [1000000000000.4, 1000000000000.3, 1000000000000.5],
    [1000000000000.6, 1000000000000.7, 1000000000000.5],
  ]);
  near("mean square", far.meanSquare, near0.meanSquare, { relative: 2e-3 });
});

// R: anova(lm(c(3, 5, 4) ~ factor(c(1, 1, 2)))) has a residual mean square of 2 with 1 degree of freedom
it("a treatment of one plant adds nothing to the spread", () => {
  expect(oneWayModel([[3, 5], [4]])).toMatchObject({ df: 1, meanSquare: 2 });
});
