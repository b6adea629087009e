import { expect, it } from "vitest";
import { FRACTIONS, ordinaryText } from "../../src/ranges/ordinaryText";

it.each([
  ["−5", "-5"],
  ["a – b — c", "a - b - c"],
  ["1\u202F250\u2009g", "1\u00A0250\u00A0g"],
  ["５０６ｇ％", "506g%"],
  ["5′ 4″", "5' 4\""],
  ["2\u20441", "2/1"],
  ["\uFEFF12", "12"],
  ["506¹ ½ é", "506¹ ½ é"],
])("ordinaryText of %j is %j", (text, ordinary) => {
  expect(ordinaryText(text)).toBe(ordinary);
});

it.each(Object.entries(FRACTIONS))("%s is worth what Unicode takes it apart into", (character, value) => {
  const [above, below] = character.normalize("NFKD").split("\u2044").map(Number);
  expect(value).toBe((above ?? Number.NaN) / (below ?? Number.NaN));
});

it("FRACTIONS has every fraction of halves to sixths and eighths that Unicode has as one character", () => {
  const all = [0xbc, 0xbd, 0xbe, ...Array.from({ length: 0x215f - 0x2153 }, (_, at) => 0x2153 + at)];
  expect(Object.keys(FRACTIONS).sort()).toEqual(all.map((code) => String.fromCodePoint(code)).sort());
});
