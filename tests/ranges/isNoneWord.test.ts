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
