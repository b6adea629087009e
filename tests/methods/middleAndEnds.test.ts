import { expect, it } from "vitest";
import { middleAndEnds } from "../../src/methods/middleAndEnds";

it.each([
  { plants: [6, 2, 4], median: 4, lowest: 2, highest: 6 },
  { plants: [6, 2, 4, 5], median: 4.5, lowest: 2, highest: 6 },
  { plants: [3], median: 3, lowest: 3, highest: 3 },
  { plants: [0, -1], median: -0.5, lowest: -1, highest: 0 },
])("of $plants", ({ plants, ...expected }) => {
  expect(middleAndEnds(plants)).toEqual(expected);
});

it("no plant has neither", () => {
  const none = { absent: "no-usable-plants" };
  expect(middleAndEnds([])).toEqual({ median: none, lowest: none, highest: none });
});
