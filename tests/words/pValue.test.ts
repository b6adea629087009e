import { expect, test } from "vitest";
import { pText } from "../../src/words/pValue";

test.each([
  [0, "< 0.001"],
  [1e-300, "< 0.001"],
  [0.001, "0.001"],
  [0.0342, "0.034"],
  [0.05287975, "0.053"],
  [0.3248638, "0.32"],
  [0.9975, "> 0.99"],
  [1, "1"],
])("pText(%d) is %s, and never 0", (p, text) => {
  expect(pText(p)).toBe(text);
});
