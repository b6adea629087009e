import { expect, test } from "vitest";
import { amountText } from "../../src/words/amount";

test.each([
  [3018.375, "3020"],
  [4350.571, "4350"],
  [24147, "24 100"],
  [0.5412, "0.541"],
  [0.54, "0.54"],
  [0.1, "0.1"],
  [12.66667, "12.7"],
  [11.04, "11"],
  [9.996, "10"],
  [999.6, "1000"],
  [99999, "100 000"],
  [0, "0"],
  [-0, "0"],
  [-2.334, "−2.33"],
  [0.00012345, "0.000123"],
])("amountText(%d) has three significant figures: %s", (amount, text) => {
  expect(amountText(amount)).toBe(text);
});

test("amountText sets the unit behind, and leaves out an empty one", () => {
  expect(amountText(3018.375, "g")).toBe("3020 g");
  expect(amountText(3018.375, " ")).toBe("3020");
});

test("amountText shows amounts as typed when asked for more figures", () => {
  expect(amountText(1003, null, 6)).toBe("1003");
  expect(amountText(0.1 + 0.2, null, 6)).toBe("0.3");
});
