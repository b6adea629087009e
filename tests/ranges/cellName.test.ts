import { expect, it } from "vitest";
import { cellName } from "../../src/ranges/cellName";

it.each([
  [1, 1, "A1"],
  [10, 4, "D10"],
  [7, 26, "Z7"],
  [7, 27, "AA7"],
  [7, 52, "AZ7"],
  [7, 702, "ZZ7"],
  [7, 703, "AAA7"],
  [1_048_576, 16_384, "XFD1048576"],
])("cellName calls row %d of column %d %s, as Excel does", (row, column, name) => {
  expect(cellName(row, column)).toBe(name);
});
