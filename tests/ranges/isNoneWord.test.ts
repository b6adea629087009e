import { expect, it } from "vitest";
import { isNoneWord } from "../../src/ranges/isNoneWord";

it.each(["none", "Nil", " NOTHING ", "-", "–", "—", "−", " - "])("isNoneWord: %j alone is nothing picked", (text) => {
  expect(isNoneWord(text)).toBe(true);
});

it.each(["none left", "--", "- 5", "-5", "", "non", "zero?", "nothing ripe"])(
  "isNoneWord: %j says more or less than that",
  (text) => {
    expect(isNoneWord(text)).toBe(false);
  },
);

it("isNoneWord takes a text of more than forty characters, spaces included, for a note", () => {
  expect(isNoneWord("none".padEnd(40))).toBe(true);
  expect(isNoneWord("none".padEnd(41))).toBe(false);
});
