import { expect, it } from "vitest";
import { notPlainSentence } from "../../src/words/notPlain";

it.each([
  ["1,250", [1250, 1.25], "Can't tell whether “1,250” is 1250 or 1.25."],
  ["12,345", [12_345, 12.345], "Can't tell whether “12,345” is 12345 or 12.345."],
] as const)("tells both readings of %s in plain digits, unlike what was typed", (given, numbers, sentence) => {
  expect(notPlainSentence(given, { why: "doubtful", numbers })).toBe(sentence);
});
