import { expect, it } from "vitest";
import { excelSheet } from "../../src/host/excel/excelSheet";
import { blankCell, dateCell, formulaCell, type NewSheet, numberCell, textCell } from "../../src/host/newSheet";
import { change, contentOf } from "./host/workbook";
import { openExcel } from "./openExcel";

const sheets = { "Anna's plan": [["mine"]], Other: [[1]] };

const wanted: NewSheet = {
  name: "Anna's plan",
  widths: [64, 100],
  blocks: [
    { address: "A1", rows: [[textCell("=1+1", { bold: true }), null, numberCell(0.1, "0%")]] },
    { address: "B3", rows: [[dateCell(45_000)], [formulaCell("=SUM(A1,C1)")], [blankCell("0.0%")], [textCell("3-2")]] },
  ],
};

it("adds a sheet with texts that stay texts, numbers, dates and formulas, and tells its name", async () => {
  const { excel } = await openExcel(sheets);
  expect(await excelSheet().add(wanted)).toBe("Anna's plan 2");
  const at = (row: number, column: number) => contentOf(excel.book, { sheet: "Anna's plan 2", row, column });
  expect(at(0, 0)).toMatchObject({ value: "=1+1", formula: "", bold: true });
  expect(at(0, 1)).toMatchObject({ value: "", formula: "" });
  expect(at(0, 2)).toMatchObject({ value: 0.1, format: "0%", bold: false });
  expect(at(2, 1)).toMatchObject({ value: 45_000, format: "yyyy-mm-dd" });
  expect(at(3, 1).formula).toBe("=SUM(A1,C1)");
  expect(at(4, 1)).toMatchObject({ value: "", formula: "", format: "0.0%" });
  expect(at(5, 1)).toMatchObject({ value: "3-2", formula: "" });
  expect([...excel.book.widths]).toEqual([
    ["'Anna''s plan 2'!A:A", 48],
    ["'Anna''s plan 2'!B:B", 75],
  ]);
});

it("leaves every sheet that was there as it was", async () => {
  const { excel } = await openExcel(sheets);
  change(excel.book, { sheet: "Other", row: 0, column: 0 }, { format: "0.0" });
  const before = structuredClone([...excel.book.sheets]);
  await excelSheet().add(wanted);
  expect([...excel.book.sheets].slice(0, 2)).toEqual(before);
});

it("a workbook that may have no new sheets is told, and stays as it was", async () => {
  const { excel } = await openExcel(sheets);
  excel.book.structureProtected = true;
  await expect(excelSheet().add(wanted)).rejects.toEqual({ trouble: "protected", where: "The workbook" });
  expect([...excel.book.sheets.keys()]).toEqual(["Anna's plan", "Other"]);
});

it("a sheet that cannot be filled is taken away again", async () => {
  const { excel } = await openExcel(sheets);
  const local: NewSheet = { ...wanted, blocks: [{ address: "A1", rows: [[formulaCell("=SUM(A1;B1)")]] }] };
  await expect(excelSheet().add(local)).rejects.toMatchObject({ trouble: "no-such-range" });
  expect([...excel.book.sheets.keys()]).toEqual(["Anna's plan", "Other"]);
});
