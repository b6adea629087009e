import { expect, test } from "vitest";
import { aboutOutOfHundred, othersOfHundred, outOfHundred, timesInHundred } from "../../src/words/chance";

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
  [0.994, "99", "about 99"],
  [0.995, "more than 99", "more than 99"],
  [0.999, "more than 99", "more than 99"],
  [1, "100", "about 100"],
])("outOfHundred and aboutOutOfHundred of %d: %s, %s", (probability, share, about) => {
  expect(outOfHundred(probability)).toBe(share);
  expect(aboutOutOfHundred(probability)).toBe(about);
});

test.each([
  [0.0002, "more than 99"],
  [0.345, "65"],
  [0.8, "20"],
  [0.994, "1"],
  [0.995, "fewer than 1"],
  [1, "fewer than 1"],
])("othersOfHundred of %d are %s", (probability, others) => {
  expect(othersOfHundred(probability)).toBe(others);
});

test("a share and the others make a hundred, whatever the rounding", () => {
  for (let thousandths = 10; thousandths < 995; thousandths++) {
    const [share, others] = [outOfHundred(thousandths / 1000), othersOfHundred(thousandths / 1000)];
    expect(Number(share) + Number(others)).toBe(100);
  }
});
