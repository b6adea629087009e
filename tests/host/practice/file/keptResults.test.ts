import { expect, it } from "vitest";
import type { Book, BookCell } from "../../../../src/files/book";
import { keptResults } from "../../../../src/host/practice/file/keptResults";

function book(cell: BookCell): Book {
  const sheet = { name: "S", hidden: false, rows: new Map([[0, new Map([[0, cell]])]]), merges: [], widths: new Map() };
  return { sheets: [sheet], looks: [{}], names: [] };
}

const formula = "=SUM(B1:B3)";
const file = book({ value: 0.3, formula });
const first = book({ value: 0.30000000000000004, formula });

it("keeps the file's own result while the grid's has not changed", () => {
  expect(keptResults(file, first, first)).toEqual(file);
});

it("takes the grid's result once it changed, or the formula did", () => {
  for (const cell of [
    { value: 0.4, formula },
    { value: 0.30000000000000004, formula: "=SUM(B1:B4)" },
    { value: 0.30000000000000004 },
  ]) {
    expect(keptResults(file, first, book(cell))).toEqual(book(cell));
  }
});

it("takes the grid's result where the file had an error, and compares every cell of a filled block", () => {
  const error = book({ value: { error: "#NAME?" }, formula });
  expect(keptResults(error, first, first)).toEqual(first);
  const spilled = (last: number) => book({ value: 1, formula, spill: [[1], [last]] });
  expect(keptResults(spilled(2), spilled(3), spilled(3))).toEqual(spilled(2));
  expect(keptResults(spilled(2), spilled(3), spilled(4))).toEqual(spilled(4));
});

it("keeps the file's look while the grid's has not changed, also where the result did", () => {
  const percent = { ...book({ value: 0.5, formula, look: 1 }), looks: [{}, { pattern: "0.0%" }] };
  const later = { ...book({ value: 0.6, formula, look: 2 }), looks: [{}, { bold: true }, { pattern: "0.0%" }] };
  expect(keptResults(file, percent, later).sheets).toEqual(book({ value: 0.6, formula }).sheets);
  const bold = { ...later, looks: [{}, { bold: true }, { pattern: "0.0%", bold: true }] };
  expect(keptResults(file, percent, bold)).toEqual(bold);
});
