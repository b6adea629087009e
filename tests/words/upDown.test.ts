import { expect, test } from "vitest";
import { shortChange, tellUpDown } from "../../src/words/upDown";
import { upDown } from "./records";

test("shortChange is the percent with its times (METHODS 8.1)", () => {
  expect(shortChange(upDown({ usualMean: 24, triedMean: 72 }))).toBe("+200 % (3 times)");
  expect(shortChange(upDown({ usualMean: 4, triedMean: 3 }))).toBe("−25 % (0.75 times)");
  expect(shortChange(upDown({ usualMean: 8, triedMean: 8 }))).toBe("0 %");
});

test("the words for one pair are METHODS' own", () => {
  expect(tellUpDown(upDown({ usualMean: 24, triedMean: 72 })).finding()).toBe("72 is 3 times 24: up 200 %, not 300 %.");
});

test("what bore a little is not down 100 %", () => {
  const found = upDown({ usualMean: 400, triedMean: 1 });
  expect(tellUpDown(found).finding()).toBe("1 is 0.002 times 400: down 99.8 %.");
  expect(shortChange(found)).toBe("−99.8 % (0.002 times)");
});
