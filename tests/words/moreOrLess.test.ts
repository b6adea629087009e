import { expect, test } from "vitest";
import { moreOrLess } from "../../src/words/moreOrLess";

test.each([
  [0.4413621, "44 % more"],
  [2, "200 % more (3 times as much)"],
  [1.36, "140 % more (2.4 times as much)"],
  [-0.25, "25 % less"],
  [-1, "100 % less"],
  [0, null],
  [0.0001, null],
])("moreOrLess(%d) is %s", (change, text) => {
  expect(moreOrLess(change)).toBe(text);
});
