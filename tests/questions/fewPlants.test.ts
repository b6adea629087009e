import { expect, it } from "vitest";
import { fewPairs, fewPlants } from "../../src/questions/fewPlants";
import { near } from "../near";

// arithmetic: 2 of the C(m + n, n) splits, 2 of the 2ⁿ flips
it.each([
  [2, 2, 2 / 6],
  [3, 3, 2 / 20],
  [2, 8, 2 / 45],
  [1, 1, 1],
])("%d against %d plants", (usual, tried, share) => {
  const caution = fewPlants(usual, tried);
  expect(caution).toMatchObject({ caution: "C01", plants: [usual, tried], pairs: false });
  if (caution.caution === "C01") near("most one-sided", caution.mostOneSided, share);
});

it.each([
  [4, 1 / 8],
  [5, 1 / 16],
])("%d pairs", (pairs, share) => {
  expect(fewPairs(pairs)).toEqual({ caution: "C01", plants: [pairs, pairs], pairs: true, mostOneSided: share });
});
