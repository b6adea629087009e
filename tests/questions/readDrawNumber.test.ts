import { expect, it } from "vitest";
import { readDrawNumber } from "../../src/questions/readDrawNumber";
import { range } from "./range";

it.each([
  [1431, 1431],
  [0, 0],
  [-42, -42],
  ["1431", 1431],
  [999_999_999_999_999, 999_999_999_999_999],
])("%s is a number to draw with", (typed, number) => {
  expect(readDrawNumber(range("draw_number", typed))).toBe(number);
});

it("nothing, and an empty cell, is no number yet", () => {
  expect(readDrawNumber(null)).toBeNull();
  expect(readDrawNumber(range("draw_number", null))).toBeNull();
});

it.each([0.5, 14.5 / 24, 1e15, -1e300])("%d is refused", (typed) => {
  expect(readDrawNumber(range("draw_number", typed))).toEqual({ problem: "draw-number", given: typed });
});

it("a word and a block of cells are refused", () => {
  expect(readDrawNumber(range("draw_number", "14:31"))).toMatchObject({ problem: "not-a-number" });
  expect(readDrawNumber(range("draw_number", [1, 2]))).toMatchObject({ problem: "one-cell-wanted" });
});
