import { expect, it } from "vitest";
import { cellIn, columnBelow } from "../../src/ranges/columnBelow";

const range = (cells: readonly (readonly number[])[]) => ({
  argument: "amounts",
  cells,
  corner: null,
  zerosVerified: true,
});

it("columnBelow passes over the first cells of a column", () => {
  expect(columnBelow(range([[1], [2], [3]]), 0)).toEqual([[1], [2], [3]]);
  expect(columnBelow(range([[1], [2], [3]]), 1)).toEqual([[2], [3]]);
});

it("columnBelow puts the cells of several columns below each other, row by row", () => {
  const block = range([
    [1, 2],
    [3, 4],
  ]);
  expect(columnBelow(block, 0)).toEqual([[1], [2], [3], [4]]);
  expect(columnBelow(block, 1)).toEqual([[2], [3], [4]]);
});

it("cellIn is null below the end of a column", () => {
  expect(cellIn([[1], [2]], 1)).toBe(2);
  expect(cellIn([[1], [2]], 2)).toBeNull();
});

it("columnBelow takes a column as it stands, without a copy", () => {
  const column = range([[1], [2]]);
  expect(columnBelow(column, 0)).toBe(column.cells);
});
