import { expect, it } from "vitest";
import { tellSmallestChange } from "../../src/words/smallestChange";
import { smallestChange } from "./records";

it.each([
  ["more", "With 2 plants each, not even a gain of 499 % shows in 80 of 100 such trials."],
  ["less", "With 2 plants each, not even a loss of 99 % shows in 80 of 100 such trials."],
] as const)("says that too few plants show no change, looking for %s", (direction, sentence) => {
  const found = smallestChange({ plantsEach: 2, change: { absent: "too-few-plants" }, direction });
  expect(tellSmallestChange(found).finding()).toBe(sentence);
});
