import { expect, it } from "vitest";
import { labelNumbers } from "../../src/questions/labelNumbers";
import { readLabels } from "../../src/ranges/readLabels";
import { range } from "./range";

it("numbers labels as they appear, whatever their letter case; a row without one has none", () => {
  const numberOf = labelNumbers(readLabels(range("beds", ["b", "A", null, "a", "B", { error: "#N/A" }]), "name"));
  expect([0, 1, 2, 3, 4, 5, 6].map(numberOf)).toEqual([0, 1, null, 1, 0, null, null]);
});

it("labels that were not given are one for all", () => {
  expect([0, 7].map(labelNumbers(null))).toEqual([0, 0]);
});
