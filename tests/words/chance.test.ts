import { expect, test } from "vitest";
import { aboutOutOfHundred, outOfHundred, timesInHundred } from "../../src/words/chance";

test.each([
  [0.0038925, "less than once"],
  [0.0099, "less than once"],
  [0.01, "about once"],
  [0.0247, "about 2 times"],
  [1 / 3, "about 33 times"],
  [0.997, "nearly every time"],
  [1, "every time"],
])("timesInHundred(%d) is %s", (probability, text) => {
  expect(timesInHundred(probability)).toBe(text);
});

test.each([
  [0.0002, "fewer than 1", "fewer than 1"],
  [0.8, "80", "about 80"],
  [0.999, "more than 99", "more than 99"],
  [1, "100", "about 100"],
])("outOfHundred and aboutOutOfHundred of %d: %s, %s", (probability, share, about) => {
  expect(outOfHundred(probability)).toBe(share);
  expect(aboutOutOfHundred(probability)).toBe(about);
});
