import { expect, it, vi } from "vitest";
import { excelSheet } from "../../src/host/excel/excelSheet";
import type { Entry } from "../../src/host/sheet";
import { mulch } from "../functions/demo";
import { change, contentOf } from "./host/workbook";
import { openExcel, sideBySide } from "./openExcel";

const formula = '=FAIRBED.COMPARETWO(A1:A9,B1:B9,"words")';
const sheets = {
  Trial: sideBySide(mulch("Bare soil"), mulch("Straw"), [null, 0, null, { error: "#N/A" }, formula]),
  "Anna's bed": [["x", 2]],
  Bare: [],
};
const cellC5 = { sheet: "Trial", row: 4, column: 2 };

const entry = (address: string, content: string | number, sheet = "Trial"): Entry => ({
  sheet,
  address,
  content,
  format: "0.0%",
});

it("the selected cell is read in both forms of its formula, with what it shows", async () => {
  const { excel } = await openExcel(sheets);
  change(excel.book, cellC5, { value: "Up.", format: "0.0%" });
  excel.select("Trial!C5:D6");
  expect(await excelSheet().selection()).toEqual({
    sheet: "Trial",
    address: "C5:D6",
    formula,
    formulaShown: formula.replaceAll(",", ";"),
    value: "Up.",
    numberFormat: "0.0%",
  });
});

it("an empty cell is null, a zero 0, an error value a record; a typed text is no formula", async () => {
  const { excel } = await openExcel(sheets);
  const seen = [];
  for (const address of ["C1", "C2", "C4", "A1"]) {
    excel.select(`Trial!${address}`);
    const { value, formula: found } = await excelSheet().selection();
    seen.push([value, found]);
  }
  expect(seen).toEqual([
    [null, ""],
    [0, ""],
    [{ error: "#N/A" }, ""],
    ["Bare soil", ""],
  ]);
});

it("a chart, several areas and a cell being typed in are told apart", async () => {
  const { excel } = await openExcel(sheets);
  excel.book.selected = "chart";
  await expect(excelSheet().selection()).rejects.toEqual({ trouble: "not-cells", where: "" });
  excel.select("Trial!A1", "Trial!C1");
  await expect(excelSheet().selection()).rejects.toEqual({ trouble: "several-areas", where: "" });
  excel.book.editing = true;
  await expect(excelSheet().selection()).rejects.toEqual({ trouble: "editing", where: "" });
});

it("references are read as formulas name them: own sheet, other sheets, names, whole columns", async () => {
  const { excel } = await openExcel(sheets);
  excel.book.names.set("Straw_plants", "Trial!B2:B3");
  const sheet = excelSheet();
  expect(await sheet.read("C1:C4", "Trial")).toEqual({
    cells: [[null], [0], [null], [{ error: "#N/A" }]],
    corner: { sheet: "Trial", row: 1, column: 3 },
  });
  expect(await sheet.read("'Anna''s bed'!$A$1:B1", "Trial")).toEqual({
    cells: [["x", 2]],
    corner: { sheet: "Anna's bed", row: 1, column: 1 },
  });
  expect((await sheet.read("Straw_plants", "Anna's bed")).corner).toEqual({ sheet: "Trial", row: 2, column: 2 });
  expect((await sheet.read("Trial!B:B", "Bare")).cells).toEqual(mulch("Straw").map((cell) => [cell]));
  expect((await sheet.read("Bare!B:C", "Trial")).cells).toEqual([[null]]);
});

it("names and tables of another sheet are read as the formula means them, a sheet's own name before the workbook's", async () => {
  const { excel } = await openExcel(sheets);
  excel.book.names.set("new", "Trial!B2:B3").set("Bare!new", "'Anna''s bed'!B1").set("total", "3");
  excel.book.namedTables.set("Plants", { sheet: "Trial", row: 0, column: 0, rows: 9, columns: 2 });
  const sheet = excelSheet();
  const corner = async (reference: string, home: string) => (await sheet.read(reference, home)).corner;
  expect(await corner("new", "Anna's bed")).toEqual({ sheet: "Trial", row: 2, column: 2 });
  expect(await corner("new", "Bare")).toEqual({ sheet: "Anna's bed", row: 1, column: 2 });
  expect(await corner("Plants[Straw]", "Bare")).toEqual({ sheet: "Trial", row: 2, column: 2 });
  expect((await sheet.read("Plants", "Bare")).cells).toHaveLength(8);
  for (const reference of ["total", "Plants[Gone!]", "[@Straw]"]) {
    await expect(sheet.read(reference, "Bare")).rejects.toEqual({ trouble: "no-such-range", where: reference });
  }
});

it("a reference to nothing is told with what was asked", async () => {
  await openExcel(sheets);
  for (const reference of ["Gone!A1", "no_such_name"]) {
    await expect(excelSheet().read(reference, "Trial")).rejects.toEqual({ trouble: "no-such-range", where: reference });
  }
});

it("formulas are written in the neutral form, with the cell's format", async () => {
  const { excel } = await openExcel(sheets);
  await excelSheet().write([entry("E2", formula), entry("E3", 35)], false);
  expect(contentOf(excel.book, { sheet: "Trial", row: 1, column: 4 })).toMatchObject({ formula, format: "0.0%" });
  expect(contentOf(excel.book, { sheet: "Trial", row: 2, column: 4 })).toMatchObject({ value: 35, formula: "" });
});

it("nothing is written when one of the cells holds something, unless it may be replaced", async () => {
  const { excel } = await openExcel(sheets);
  const entries = [entry("E2", 1), entry("A2", 2)];
  await expect(excelSheet().write(entries, false)).rejects.toEqual({ trouble: "not-empty", where: "A2" });
  expect(contentOf(excel.book, { sheet: "Trial", row: 1, column: 4 }).value).toBe(null);
  await excelSheet().write(entries, true);
  expect(contentOf(excel.book, { sheet: "Trial", row: 1, column: 0 }).value).toBe(2);
});

it("a protected sheet, a missing sheet and a local formula are refused by Excel, and told", async () => {
  const { excel } = await openExcel(sheets);
  excel.book.protectedSheets.add("Trial");
  const sheet = excelSheet();
  await expect(sheet.write([entry("E2", 1)], false)).rejects.toEqual({ trouble: "protected", where: "E2" });
  await expect(sheet.format("Trial", "E2", "0")).rejects.toEqual({ trouble: "protected", where: "E2" });
  await expect(sheet.write([entry("E2", 1, "Gone")], false)).rejects.toMatchObject({ trouble: "no-such-range" });
  const local = formula.replaceAll(",", ";");
  await expect(sheet.write([entry("E2", local, "Bare")], false)).rejects.toMatchObject({ trouble: "no-such-range" });
});

it("a cell is shown by selecting it", async () => {
  const { excel } = await openExcel(sheets);
  await excelSheet().select("Anna's bed", "B1");
  expect(excel.book.selected).toMatchObject([{ sheet: "Anna's bed", row: 0, column: 1 }]);
});

it("all our formulas of the workbook are found, with their cells", async () => {
  await openExcel(sheets);
  expect(await excelSheet().calls()).toEqual([{ sheet: "Trial", address: "C5", formula }]);
});

it("changes are told only after Excel agreed to tell them, and no more once they are not wanted", async () => {
  const { excel } = await openExcel(sheets);
  const notice = vi.fn();
  const end = excelSheet().onChange(notice);
  excel.select("Trial!A2");
  expect(notice).not.toHaveBeenCalled();
  await vi.waitUntil(() => excel.requests.length > 0);
  await new Promise((resolve) => setTimeout(resolve, 20));
  excel.select("Trial!A3");
  await vi.waitFor(() => expect(notice).toHaveBeenCalledTimes(1));
  excel.type("Trial!A3", [[5]]);
  await vi.waitFor(() => expect(notice).toHaveBeenCalledTimes(2));
  end();
  excel.select("Trial!A4");
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(notice).toHaveBeenCalledTimes(2);
});

it("a cell being typed in puts the telling off, and what was missed is told once", async () => {
  const { excel } = await openExcel(sheets);
  excel.book.editing = true;
  const notice = vi.fn();
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
  const end = excelSheet().onChange(notice);
  await vi.waitUntil(() => excel.requests.length > 0);
  await vi.advanceTimersByTimeAsync(2000);
  expect(notice).not.toHaveBeenCalled();
  excel.book.editing = false;
  await vi.advanceTimersByTimeAsync(2000);
  await vi.waitFor(() => expect(notice).toHaveBeenCalledTimes(1));
  vi.useRealTimers();
  excel.select("Trial!A3");
  await vi.waitFor(() => expect(notice).toHaveBeenCalledTimes(2));
  end();
});

it("an Excel that never answers is not waited for longer than three seconds", async () => {
  const { excel } = await openExcel(sheets);
  excel.silent = true;
  await expect(excelSheet().read("A1", "Trial")).rejects.toEqual({ trouble: "unreadable", where: "A1" });
});

it("works with what the manifest asks of Excel, which the library holds us to", async () => {
  await openExcel(sheets);
  const newer = Excel.run(async (context) => {
    context.workbook.getActiveCell().getPrecedents();
    await context.sync();
  });
  await expect(newer).rejects.toMatchObject({ code: "ApiNotFound" });
});

it("the theme is Office's own where Office has one", async () => {
  await openExcel(sheets);
  vi.stubGlobal("matchMedia", () => ({ matches: true }));
  expect(excelSheet().theme()).toEqual({ dark: true });
  vi.unstubAllGlobals();
});
