import { describe, expect, it, vi } from "vitest";
import { excelSheet } from "../../src/host/excel/excelSheet";
import { numberCell, textCell } from "../../src/host/newSheet";
import type { OwnSheet } from "../../src/host/ownSheet";
import type { FakeExcel } from "./host/fakeExcel";
import { addedSheet, deleteSheet, moveSheet, renameSheet } from "./host/sheetList";
import { contentOf } from "./host/workbook";
import { openExcel } from "./openExcel";

const sheets = { "Anna's bed": [["mine"]], Report: [["mine too"]] };

const wanted: OwnSheet = {
  name: "Report",
  widths: [100],
  blocks: [
    { address: "A1", rows: [[textCell("Straw: what it gave", { bold: true })]] },
    {
      address: "A3",
      rows: [
        [textCell("Treatment", { bold: true }), textCell("Average (g)", { bold: true })],
        [textCell("=Bare"), numberCell(3063.1, "0")],
        [textCell("Straw"), numberCell(4350.6, "0")],
      ],
    },
  ],
  tables: ["A3:B5"],
  charts: [
    {
      title: "Average (g)",
      bars: [
        { name: "=Bare", figure: 3063.1, usual: true },
        { name: "Straw", figure: 4350.6, usual: false },
      ],
      format: "0",
      names: "A4:A5",
      figures: "B4:B5",
      place: "A7:E18",
    },
  ],
};
const later: OwnSheet = { ...wanted, blocks: [{ address: "A1", rows: [[textCell("Later")]] }], tables: [], charts: [] };

const at = (excel: FakeExcel, sheet: string, row: number, column: number) =>
  contentOf(excel.book, { sheet, row, column });
const names = (excel: FakeExcel) => [...excel.book.sheets.keys()];

it("adds the sheet with its cells, a native table and a native chart, and leaves one of the same name alone", async () => {
  const { excel } = await openExcel(sheets);
  expect(await excelSheet().putOwn(wanted, null)).toBe("Report 2");
  expect(names(excel)).toEqual(["Anna's bed", "Report", "Report 2"]);
  expect(at(excel, "Report", 0, 0).value).toBe("mine too");
  expect(at(excel, "Report 2", 0, 0)).toMatchObject({ value: "Straw: what it gave", bold: true });
  // what looks like a formula is a text
  expect(at(excel, "Report 2", 3, 0)).toMatchObject({ value: "=Bare", formula: "" });
  expect(at(excel, "Report 2", 3, 1)).toMatchObject({ value: 3063.1, format: "0" });
  expect(excel.book.tables).toEqual(["'Report 2'!A3:B5"]);
});

it("the chart names its bars by the cells beside them, starts at zero and tells usual and new apart", async () => {
  const { excel } = await openExcel({ Trial: [] });
  await excelSheet().putOwn(wanted, null);
  const [chart] = excel.book.charts;
  expect(chart).toMatchObject({ sheet: "Report", type: "BarClustered", source: "Report!B4:B5" });
  expect(Object.fromEntries(chart?.set ?? [])).toMatchObject({
    "title/Text": "Average (g)",
    "series/names": "Report!A4:A5",
    "labels/NumberFormat": "0",
    "figures/Minimum": 0,
    "point 0": "#7A5C12",
    "point 1": "#2D6A2E",
    place: "A7:E18",
  });
});

it("a chart with a figure below zero starts where Excel will have it", async () => {
  const { excel } = await openExcel({ Trial: [] });
  const bars = wanted.charts.flatMap((chart) => chart.bars).map((bar) => ({ ...bar, figure: -bar.figure }));
  await excelSheet().putOwn({ ...wanted, charts: wanted.charts.map((chart) => ({ ...chart, bars })) }, null);
  expect(excel.book.charts[0]?.set.has("figures/Minimum")).toBe(false);
});

it("prints as wide as a page; an Excel without a printer makes the sheet all the same", async () => {
  const { excel } = await openExcel({ Trial: [] });
  await excelSheet().putOwn(wanted, null);
  expect([...excel.book.onePageWide]).toEqual(["Report"]);
  excel.book.refused.add("page");
  expect(await excelSheet().putOwn(wanted, null)).toBe("Report 2");
});

describe("a later run", () => {
  it("takes the place of its own sheet, also when the grower renamed and moved it", async () => {
    const { excel } = await openExcel(sheets);
    await excelSheet().putOwn(wanted, null);
    moveSheet(excel.book, "Report 2", 0);
    renameSheet(excel.book, "Report 2", "Anna's report");
    expect(await excelSheet().ownSheets()).toEqual(["Anna's report"]);
    expect(await excelSheet().putOwn(later, "Anna's report")).toBe("Anna's report");
    expect(names(excel)).toEqual(["Anna's report", "Anna's bed", "Report"]);
    expect(at(excel, "Anna's report", 0, 0).value).toBe("Later");
    expect([excel.book.tables, excel.book.charts]).toEqual([[], []]);
    expect([...excel.book.names.values()]).toEqual(["'Anna''s report'!A1"]);
    expect(await excelSheet().ownSheets()).toEqual(["Anna's report"]);
  });

  it("never takes the place of another sheet, whatever it is asked for", async () => {
    const { excel } = await openExcel(sheets);
    expect(await excelSheet().putOwn(later, "Report")).toBe("Report 2");
    expect(at(excel, "Report", 0, 0).value).toBe("mine too");
  });

  it("updates the one of two reports that is meant, and lists the newest last", async () => {
    const { excel } = await openExcel({ Trial: [] });
    await excelSheet().putOwn(wanted, null);
    await excelSheet().putOwn(wanted, null);
    expect(await excelSheet().ownSheets()).toEqual(["Report", "Report 2"]);
    await excelSheet().putOwn(later, "Report");
    expect(at(excel, "Report 2", 0, 0).value).toBe("Straw: what it gave");
    expect(await excelSheet().ownSheets()).toEqual(["Report 2", "Report"]);
  });

  it("makes a new sheet where its own was deleted, beside a new one of that name", async () => {
    const { excel } = await openExcel({ Trial: [] });
    await excelSheet().putOwn(wanted, null);
    deleteSheet(excel.book, "Report");
    addedSheet(excel.book, "Report");
    expect(await excelSheet().ownSheets()).toEqual([]);
    expect(await excelSheet().putOwn(later, "Report")).toBe("Report 2");
  });
});

describe("nothing is lost when a step fails", () => {
  it("in a protected workbook: nothing is added, and the sentence is about the workbook", async () => {
    const { excel } = await openExcel(sheets);
    excel.book.structureProtected = true;
    await expect(excelSheet().putOwn(wanted, null)).rejects.toEqual({ trouble: "protected", where: "The workbook" });
    expect(names(excel)).toEqual(["Anna's bed", "Report"]);
  });

  it("a chart that cannot be made: the new sheet goes, the old report stays as it was", async () => {
    const { excel } = await openExcel({ Trial: [] });
    await excelSheet().putOwn(wanted, null);
    const before = structuredClone(excel.book);
    excel.book.refused.add("chart");
    const refused = { trouble: "unreadable", where: "Report 2" };
    await expect(excelSheet().putOwn(wanted, "Report")).rejects.toMatchObject(refused);
    excel.book.refused.clear();
    expect(excel.book.sheets).toEqual(before.sheets);
    expect([...excel.book.names]).toEqual([...before.names]);
    expect(await excelSheet().ownSheets()).toEqual(["Report"]);
  });

  it("an old report that cannot be deleted: the new sheet that cannot go either is named", async () => {
    const { excel } = await openExcel({ Trial: [] });
    await excelSheet().putOwn(wanted, null);
    excel.book.refused.add("delete");
    await expect(excelSheet().putOwn(later, "Report")).rejects.toEqual({ trouble: "half-made", where: "Report 2" });
    expect(at(excel, "Report", 0, 0).value).toBe("Straw: what it gave");
  });

  it("a name that cannot be given back: the new report keeps its own", async () => {
    const { excel } = await openExcel({ Trial: [] });
    await excelSheet().putOwn(wanted, null);
    excel.book.refused.add("rename");
    expect(await excelSheet().putOwn(later, "Report")).toBe("Report 2");
    expect(await excelSheet().ownSheets()).toEqual(["Report 2"]);
    expect(names(excel)).toEqual(["Trial", "Report 2"]);
  });

  it("an Excel that is slow to delete may have done it: then the new report is not taken away", async () => {
    const { excel } = await openExcel({ Trial: [] });
    await excelSheet().putOwn(wanted, null);
    const { execute } = excel;
    vi.spyOn(excel, "execute").mockImplementation(async (body) => {
      const answer = await execute(body);
      return body.includes('"Delete"') ? new Promise(() => undefined) : answer;
    });
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const put = excelSheet().putOwn(later, "Report");
    await vi.waitFor(() => expect(names(excel)).toEqual(["Trial", "Report 2"]));
    await vi.advanceTimersByTimeAsync(3000);
    await vi.waitFor(() => expect(names(excel)).toEqual(["Trial", "Report"]));
    await vi.advanceTimersByTimeAsync(3000);
    expect(await put).toBe("Report");
    vi.useRealTimers();
    expect(at(excel, "Report", 0, 0).value).toBe("Later");
  });
});
