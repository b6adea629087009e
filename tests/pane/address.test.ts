import { expect, it } from "vitest";
import { addressOf, contains, firstCell, firstSpot } from "../../src/pane/address";

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

it.each([
  ["B2:C9", "C9", true],
  ["B2:C9", "B1", false],
  ["B2:C9", "D9", false],
  ["B2:C9", "C10", false],
  ["B2", "B2", true],
  ["B2", "B3", false],
  ["B:C", "C1048576", true],
  ["B:C", "A1", false],
  ["B:C", "D1", false],
  ["3:5", "XFD4", true],
  ["3:5", "A6", false],
])("%s contains %s: %s", (range, cell, is) => {
  expect(contains(range, cell)).toBe(is);
});
