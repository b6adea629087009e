import { expect, it } from "vitest";
import { cellsOf, filledLength, isEmpty, widthOf } from "../../src/ranges/cellsOf";
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

it.each([
  [null, true],
  ["", true],
  [" \u00A0", true],
  [0, false],
  [false, false],
  ["-", false],
  [{ error: "#N/A" }, false],
])("isEmpty of %j is %s", (cell, empty) => {
  expect(isEmpty(cell)).toBe(empty);
});
