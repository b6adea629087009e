import { expect, it } from "vitest";
import { readColumn } from "../../src/ranges/readColumn";
import { column } from "./column";

it("readColumn takes the heading off, its unit for the column's, and notes the numbers", () => {
  const read = readColumn(column(["Straw (g)", 177, "0.2 kg", "none", "lost", null]), {});
  expect(read).toMatchObject({ name: "Straw", unit: "g", from: 1 });
  expect(read.cells.map(({ means }) => means)).toEqual(["amount", "amount", "amount", "lost"]);
  expect(read.numbers).toEqual([
    { value: 177, index: 1, numberCell: true },
    { value: 200, index: 2, numberCell: false },
  ]);
});

it("readColumn reads as many cells as the extent says", () => {
  expect(readColumn(column([1, null, null]), { length: 2 }).cells.length).toBe(2);
});

it("readColumn takes off the first cell, or leaves it, as the extent says", () => {
  expect(readColumn(column([null, 1]), { heading: true })).toMatchObject({ name: null, from: 1 });
  expect(readColumn(column(["Straw", 1]), { heading: false })).toMatchObject({ name: null, from: 0 });
});
