import { expect, it } from "vitest";
import { theTrial } from "../../../../src/host/practice/workbook/theTrial";

/** The values of one column of the data, rows 2 to 9. */
function column(letter: string): unknown[] {
  return Array.from({ length: 8 }, (_, at) => theTrial.cells[`${letter}${at + 2}`]?.v);
}

it("heads the columns with bed and treatments", () => {
  expect(["A1", "B1", "C1", "D1", "E1"].map((address) => theTrial.cells[address]?.v)).toEqual([
    "Bed",
    "Bare soil",
    "Straw",
    "Woodchip",
    "Grass clippings",
  ]);
});

// Totals of the plants that lived, as published with the demo trial: 24 147, 30 454, 24 569 and 23 807 g.
it.each([
  ["B", 8, 24_147],
  ["C", 7, 30_454],
  ["D", 8, 24_569],
  ["E", 7, 23_807],
])("column %s holds %i plants with %i g in all", (letter, plants, grams) => {
  const numbers = column(letter).filter((value) => typeof value === "number");
  expect(numbers).toHaveLength(plants);
  expect(numbers.reduce((sum, value) => sum + value, 0)).toBe(grams);
});

it("names the two lost plants and what took them", () => {
  expect(theTrial.cells.C5?.v).toBe("lost (wheelbarrow)");
  expect(theTrial.cells.E3?.v).toBe("lost (slugs)");
});
