import { expect, it } from "vitest";
import { cellsOf, filledLength, widthOf } from "../../src/ranges/cellsOf";
import { block } from "./column";

const ragged = block([
  [1, null],
  [2, 3],
  [4, null],
  [null, " "],
]);

it("cellsOf goes row by row", () => {
  expect(cellsOf(ragged)).toEqual([1, null, 2, 3, 4, null, null, " "]);
});

it("filledLength counts up to the last filled cell, spaces not being one", () => {
  expect(filledLength(ragged)).toBe(5);
  expect(filledLength(block([[null], [null]]))).toBe(0);
});

it("widthOf is at least one, so that places can be worked out", () => {
  expect(widthOf(ragged)).toBe(2);
  expect(widthOf(block([]))).toBe(1);
});
