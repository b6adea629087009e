import { expect, it } from "vitest";
import { cellMeaning } from "../../src/ranges/cellMeaning";

const amount = (value: number, read: string, unit: string | null = null) => ({ means: "amount", value, unit, read });
const unusable = (why: string) => ({ means: "unusable", why });

it.each([
  [3018, amount(3018, "number")],
  [-2, amount(-2, "number")],
  ["506", amount(506, "number")],
  ["506*", amount(506, "mark-removed")],
  ["177 g", amount(177, "number", "g")],
  ["none", amount(0, "none-word")],
  ["–", amount(0, "none-word")],
  ["lost", { means: "lost" }],
  ["lost 14 July", { means: "lost" }],
  ["lost 2 fruit", unusable("text")],
  ["not weighed", unusable("text")],
  ["n/a", unusable("text")],
  ["?", unusable("text")],
  ["15%", unusable("text")],
  ["1,250", unusable("doubtful-number")],
  [null, unusable("empty")],
  ["  ", unusable("empty")],
  [false, unusable("true-or-false")],
  [{ error: "#N/A" }, unusable("error")],
  [Number.NaN, unusable("error")],
  [Number.POSITIVE_INFINITY, unusable("error")],
])("cellMeaning of %j", (cell, meaning) => {
  expect(cellMeaning(cell)).toEqual(meaning);
});

it("cellMeaning gives 0 for −0, typed or not", () => {
  for (const cell of [-0, "-0"]) expect(cellMeaning(cell)).toHaveProperty("value", 0);
});
