import { expect, it } from "vitest";
import { ordinaryText } from "../../src/ranges/ordinaryText";

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
