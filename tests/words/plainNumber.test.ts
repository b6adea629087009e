import { expect, test } from "vitest";
import { plainNumber } from "../../src/words/plainNumber";

test.each([
  [0, 0, "0"],
  [-0, 2, "0"],
  [-0.004, 2, "0"],
  [-3, 0, "−3"],
  [4350, 0, "4350"],
  [24147, 0, "24 147"],
  [2704156, 0, "2 704 156"],
  [-1234567.5, 1, "−1 234 567.5"],
  [0.5, 3, "0.5"],
  [2.4, 3, "2.4"],
  [100, 2, "100"],
  [1e21, 0, "1 000 000 000 000 000 000 000"],
  [1e-9, 12, "0.000000001"],
])("plainNumber(%d, %d) is %s", (value, decimals, text) => {
  expect(plainNumber(value, decimals)).toBe(text);
});
