import { describe, expect, it } from "vitest";
import { normalTwoSided, tailCount } from "../../src/methods/rankTest";
import { near } from "../near";
import reference from "../reference/midranks.json";

function twoSided(seen: number, statistics: readonly number[]): number {
  const tails = tailCount(seen);
  for (const statistic of statistics) tails.look(statistic);
  return tails.twoSided();
}

describe("tailCount is twice the smaller tail", () => {
  it("what ties with the statistic seen counts in both tails, and p stays at most 1", () => {
    expect(twoSided(3, [1, 3, 3, 5])).toBe(1);
    expect(twoSided(3, [1, 2, 3, 3, 4, 5, 6, 7, 8, 9])).toBe(0.8);
  });

  it.each([2, 9])("of ten equally likely, two lie as far out as %d on its side", (seen) => {
    expect(twoSided(seen, [10, 9, 8, 7, 6, 5, 4, 3, 2, 1])).toBe(0.4);
  });
});

describe("normalTwoSided agrees with R's wilcox.test(exact = FALSE, correct = TRUE)", () => {
  it.each(reference.cases)("$trial: $distance from expected", ({ distance, variance, pValue }) => {
    near("p", normalTwoSided(distance, variance), pValue, { relative: 1e-13 });
    near("p, mirrored", normalTwoSided(-distance, variance), pValue, { relative: 1e-13 });
  });
});

it("normalTwoSided is 1 for a statistic that cannot vary, and within the continuity correction", () => {
  expect(normalTwoSided(0, 0)).toBe(1);
  expect(normalTwoSided(2, 0)).toBe(1);
  // all ranks tied: rounding may leave a variance just below 0
  expect(normalTwoSided(0, -1e-13)).toBe(1);
  expect(normalTwoSided(0.5, 4)).toBe(1);
  expect(normalTwoSided(0, 4)).toBe(1);
});
