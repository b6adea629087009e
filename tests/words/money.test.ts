import { expect, test } from "vitest";
import { moneyText } from "../../src/words/money";

test.each([
  [1.9, "1.90"],
  [-0.35, "−0.35"],
  [0, "0.00"],
  [-0.001, "0.00"],
  [99.994, "99.99"],
  [99.996, "100"],
  [1250.4, "1250"],
  [-24100, "−24 100"],
])("%f reads %s", (amount, text) => {
  expect(moneyText(amount)).toBe(text);
});
