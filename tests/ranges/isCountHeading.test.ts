import { expect, it } from "vitest";
import { isCountHeading } from "../../src/ranges/isCountHeading";

it.each([
  ["fruit", true],
  [" fruit ", true],
  ["Number picked", true],
  ["No. of pods", true],
  ["fruit (g)", false],
  ["No of heads", true],
  ["no fruit", true],
  ["No", true],
  ["Fruit (large)", true],
  ["country", false],
  ["No mulch", false],
  ["No straw (control)", false],
  ["Fruit weight", false],
  ["Fruit weight, trimmed", false],
  ["Heads to weigh", false],
  ["Pod length", false],
  ["Heads weigh", false],
  ["Pod length each", false],
  [" fruit ", true],
  ["Heads, weighed", false],
  ["grams", false],
  [null, false],
])("%s: %s", (heading, says) => {
  expect(isCountHeading(heading)).toBe(says);
});
