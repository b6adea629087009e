import { expect, it } from "vitest";
import { sumsOfSquares } from "../../src/questions/sumsOfSquares";
import { near } from "../near";
import { columnsOf, joint, trialOf } from "./trialOf";

const columns = columnsOf([
  [1, 2, 3],
  [4, 5, 9],
  [7, 8, 6],
]);
const beds = [1, 2, 3, 1, 2, 3, 1, 2, 3].map((bed) => bed - 1);
const asked = { how: "all pairs", usual: null } as const;

/** Source, degrees of freedom, sum of squares, mean square, F and p. */
type Line = readonly [string, number, number, number, number | null, number | null];

function lines(trial: ReturnType<typeof trialOf>): readonly (readonly unknown[])[] {
  const rounded = (value: number | null) => (value === null ? null : Number(value.toFixed(10)));
  return sumsOfSquares(joint(trial, asked).model).lines.map(({ source, df, sumOfSquares, meanSquare, f, p }) => [
    source,
    df,
    ...[sumOfSquares, meanSquare, f, p].map(rounded),
  ]);
}

// By hand: averages 2, 6 and 7 about 5 give 3 (9 + 1 + 4) = 42; the plants about them give 2 + 14 + 2 = 18. With 2 degrees
// of freedom above, p is (1 + 2 F / d) to the power of -d/2.
it("separate plants have no line for beds", () => {
  const expected: readonly Line[] = [
    ["treatments", 2, 42, 21, 7, 0.027],
    ["residual", 6, 18, 3, null, null],
  ];
  expect(lines(trialOf(columns))).toEqual(expected);
});

// By hand: the beds' averages 4, 5 and 6 give 3 (1 + 0 + 1) = 6 of those 18.
it("beds come first", () => {
  const expected: readonly Line[] = [
    ["beds", 2, 6, 3, 1, Number((4 / 9).toFixed(10))],
    ["treatments", 2, 42, 21, 7, Number((4 / 81).toFixed(10))],
    ["residual", 4, 12, 3, null, null],
  ];
  expect(lines(trialOf({ ...columns, bed: beds }))).toEqual(expected);
});

// R's qt(.975, 6) and qt(.975, 4), times the root of 3 (1/3 + 1/3)
it("the least significant difference is Student's value times the standard error of a difference", () => {
  const least = (trial: ReturnType<typeof trialOf>) =>
    sumsOfSquares(joint(trial, asked).model).leastSignificantDifference ?? Number.NaN;
  near("separate", least(trialOf(columns)), 2.446911851144969 * Math.SQRT2, { relative: 1e-12 });
  near("in beds", least(trialOf({ ...columns, bed: beds })), 2.776445105197793 * Math.SQRT2, { relative: 1e-12 });
});
