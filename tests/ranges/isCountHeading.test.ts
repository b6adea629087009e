import { expect, it } from "vitest";
import { isCountHeading } from "../../src/ranges/isCountHeading";

it.each([
  ["fruit", true],
  ["Number picked", true],
  ["No. of pods", true],
  ["fruit (g)", false],
  ["country", false],
  ["grams", false],
  [null, false],
])("%s: %s", (heading, says) => {
  expect(isCountHeading(heading)).toBe(says);
});
