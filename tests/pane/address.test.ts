import { expect, it } from "vitest";
import { addressOf, firstCell, firstSpot } from "../../src/pane/address";

it.each([
  ["A1", 1, 1],
  ["$B$12", 12, 2],
  ["Z9", 9, 26],
  ["AA9", 9, 27],
  ["XFD1048576", 1048576, 16384],
])("%s is row %d, column %d, and back", (address, row, column) => {
  expect(firstSpot(address)).toEqual({ row, column });
  expect(addressOf({ row, column })).toBe(address.replaceAll("$", ""));
});

it.each([
  ["B2:C9", "B2"],
  ["B:C", "B1"],
  ["3:5", "A3"],
])("the first cell of %s is %s", (address, first) => {
  expect(firstCell(address)).toBe(first);
});
