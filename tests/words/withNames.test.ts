import { expect, test } from "vitest";
import { withNames } from "../../src/words/withNames";
import { wordCount } from "../../src/words/wordCount";

const long = "chipped hedge prunings laid in April";

test("headings of six words each stand whole where the sentence has room", () => {
  expect(withNames(long, "straw", ({ usual, tried }) => `${tried} beat ${usual}.`)).toBe(`straw beat ${long}.`);
});

// METHODS 6.3: a sentence is at most 25 words long.
test("headings are cut further where six words each would pass 25", () => {
  const filler = Array.from({ length: 17 }, () => "word").join(" ");
  const told = withNames(long, "straw laid in May by hand", ({ usual, tried }) => `${filler} ${tried} ${usual}.`);
  expect(wordCount(told)).toBeLessThanOrEqual(25);
  expect(told).toContain("chipped hedge");
});

test("headings are not cut so far that they read the same", () => {
  const filler = Array.from({ length: 17 }, () => "word").join(" ");
  const told = withNames(
    long,
    "chipped hedge cuttings laid in May",
    ({ usual, tried }) => `${filler} ${tried} ${usual}.`,
  );
  expect(told).toContain("chipped hedge cuttings");
  expect(told).toContain("chipped hedge prunings");
});

test("where nothing fits, the shortest is told rather than nothing", () => {
  const filler = Array.from({ length: 30 }, () => "word").join(" ");
  const told = withNames(long, "straw", ({ usual, tried }) => `${filler} ${tried} ${usual}.`);
  expect(wordCount(told)).toBe(30 + 1 + 2);
});
