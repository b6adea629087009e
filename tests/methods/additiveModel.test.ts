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

// two treatments and two beds take all that three plants tell, and rounding leaves more or less than nothing
it("without degrees of freedom there is no mean square, whatever rounding leaves", () => {
  for (let at = 1; at <= 20; at += 1) {
    const values = [at / 10, at / 7, Math.sqrt(at)];
    const plants = values.map((value, plant) => ({ value, treatment: plant % 2, bed: Math.floor(plant / 2) }));
    const model = additiveModel(plants);
    expect([model?.df, model?.meanSquare]).toEqual([0, Number.NaN]);
  }
});
