import { expect, test } from "vitest";
import { wordCount } from "../../src/words/wordCount";

test("wordCount counts runs with a letter or digit", () => {
  expect(wordCount("")).toBe(0);
  expect(wordCount("so 44 % more")).toBe(3);
  expect(wordCount("anything from −1 % to +95 %, – 🥒")).toBe(5);
});
