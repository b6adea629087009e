import { describe, expect, it } from "vitest";
import { additiveModel } from "../../src/methods/additiveModel";
import { near } from "../near";
import { manyCases, modelOf } from "./manyCases";

describe("additiveModel agrees with R's lm(value ~ bed + treatment)", () => {
  it.each(manyCases.filter(({ beds }) => beds))("$name", (known) => {
    const { means, meanSquare, df, squares, bedShare } = modelOf(known);
    for (const [at, mean] of known.means.entries()) near(`adjusted average ${at}`, means[at] ?? 0, mean);
    near("mean square", meanSquare, known.mse);
    near("beds", squares.beds?.sumOfSquares ?? 0, known.ssBeds);
    near("treatments", squares.treatments.sumOfSquares, known.ssTreatments);
    near("bed share", bedShare, known.bedShare, { relative: 1e-9 });
    expect(df).toBe(known.df);
  });
});

it("each treatment in its own bed cannot be told from the bed", () => {
  const plants = [0, 0, 1, 1].map((treatment, at) => ({ value: at + 1, treatment, bed: treatment }));
  expect(additiveModel(plants)).toBeNull();
});

it("two pairs of treatments that share no bed cannot be compared", () => {
  const plants = [0, 1, 0, 1, 2, 3, 2, 3].map((treatment, at) => ({
    value: at ** 2,
    treatment,
    bed: Math.floor(at / 2),
  }));
  expect(additiveModel(plants)).toBeNull();
});
