import { expect, it } from "vitest";
import { number, text } from "../../../../src/host/practice/workbook/cells";
import { sheetData } from "../../../../src/host/practice/workbook/sheetData";

it("sheetData puts cells, widths and merged blocks where their addresses say", () => {
  const data = sheetData({
    id: "s",
    name: "S",
    cells: { A1: text("Bed"), B1: text("Straw"), B2: number(3249) },
    widths: [40, 80],
    merged: ["A3:B4"],
  });
  expect(data.cellData).toEqual({ 0: { 0: text("Bed"), 1: text("Straw") }, 1: { 1: number(3249) } });
  expect(data.columnData).toEqual({ 0: { w: 40 }, 1: { w: 80 } });
  expect(data.mergeData).toEqual([{ startRow: 2, endRow: 3, startColumn: 0, endColumn: 1 }]);
});
