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

// Unicode's own decomposition says what each character stands for: "⅓" is "1⁄3"
it.each(Object.entries(FRACTIONS))("FRACTIONS has %s as %d", (character, value) => {
  const [above, below] = character.normalize("NFKD").split("\u2044").map(Number);
  expect(value).toBe(Number(above) / Number(below));
});
