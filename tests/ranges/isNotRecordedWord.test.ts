import { expect, it } from "vitest";
import { isNotRecordedWord } from "../../src/ranges/isNotRecordedWord";

it.each(["n/a", "NA", "?", "Forgot", "not  weighed", "no harvest", "missing"])(
  "isNotRecordedWord: %j is no number and no heading",
  (text) => {
    expect(isNotRecordedWord(text)).toBe(true);
  },
);

it.each(["Straw", "not weighed yet", "lost", "none", ""])("isNotRecordedWord: %j is something else", (text) => {
  expect(isNotRecordedWord(text)).toBe(false);
});

it("isNotRecordedWord takes a text of more than forty characters, spaces included, for a note", () => {
  expect(isNotRecordedWord("forgot".padEnd(40))).toBe(true);
  expect(isNotRecordedWord("forgot".padEnd(41))).toBe(false);
});
