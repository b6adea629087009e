import { expect, test } from "vitest";
import { sentenceStart } from "../../src/words/sentenceStart";

test.each([
  ["the new", "The new"],
  ["straw", "Straw"],
  ["Straw", "Straw"],
  ["pH 6", "pH 6"],
  ["écorce", "Écorce"],
  ["2 cm of straw", "2 cm of straw"],
  ["row 3 of usual", "Row 3 of usual"],
  ["D4 and D7", "D4 and D7"],
  ["", ""],
])("sentenceStart(%o) is %o", (text, start) => {
  expect(sentenceStart(text)).toBe(start);
});
