import { expect, it } from "vitest";
import { sweptBeds } from "../../src/methods/sweptBeds";
import { near } from "../near";

const beds = [
  [3, 5, 10],
  [4, 9, 8],
  [1, 4, 6],
  [6, 6, 9],
].map((values) => values.map((value, treatment) => ({ value, treatment })));

// where every bed holds every treatment once, the textbook's block analysis: plain averages, variance 1/b, no covariance
it("complete beds give plain averages that vary independently", () => {
  const fit = sweptBeds(beds, 3);
  for (const [at, mean] of [3.5, 6, 8.25].entries()) near(`mean ${at}`, fit?.means[at] ?? 0, mean, { relative: 1e-14 });
  const covariance = fit?.unscaledCovariance.flat() ?? [];
  expect(covariance).toEqual([0.25, 0, 0, 0, 0.25, 0, 0, 0, 0.25].map((entry) => expect.closeTo(entry, 14)));
});

// values less their treatment's and their bed's average plus the average of all
it("what treatments and beds leave of complete beds", () => {
  const all = beds.flat().map(({ value }) => value);
  const average = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const left = beds.flatMap((bed) =>
    bed.map(
      ({ value, treatment }) =>
        value -
        average(beds.map((other) => other[treatment]?.value ?? 0)) -
        average(bed.map((other) => other.value)) +
        average(all),
    ),
  );
  const squares = left.reduce((sum, gap) => sum + gap ** 2, 0);
  near("residual", sweptBeds(beds, 3)?.residualSumOfSquares ?? 0, squares, { relative: 1e-13 });
});

it("treatments that share no bed cannot be told from the beds", () => {
  const apart = [
    [
      { value: 1, treatment: 0 },
      { value: 2, treatment: 0 },
    ],
    [{ value: 3, treatment: 1 }],
  ];
  expect(sweptBeds(apart, 2)).toBeNull();
});
