import { expect, it } from "vitest";
import { excelUpkeep } from "../../src/host/excel/excelUpkeep";
import { contentOf, fill } from "./host/workbook";
import { openExcel } from "./openExcel";

const formula = '=FAIRBED.PERPLANT(A1:A3,"table")';
const cell = (row: number, column: number) => ({ sheet: "Trial", row, column });
const sheets = {
  Trial: [
    [4, "x", "=_xldudf_FAIRBED_UPDOWN(A1,A2)"],
    [5, "=FAIRBED.UPDOWN(A1,A2)", formula],
  ],
  Empty: [],
};

it("cells that Excel does not recognise are found in both of their forms, and entered anew", async () => {
  const { excel } = await openExcel(sheets);
  fill(excel.book, cell(0, 3), [[{ error: "#NAME?" }]]);
  excel.book.sheets.get("Trial")?.set("1,1", { ...contentOf(excel.book, cell(1, 1)), value: { error: "#NAME?" } });
  const found = await excelUpkeep().strangers();
  expect(found).toEqual([
    { sheet: "Trial", address: "C1", formula: "=FAIRBED.UPDOWN(A1,A2)" },
    { sheet: "Trial", address: "B2", formula: "=FAIRBED.UPDOWN(A1,A2)" },
  ]);
  await excelUpkeep().enterAnew(found);
  expect(contentOf(excel.book, cell(0, 2)).formula).toBe("=FAIRBED.UPDOWN(A1,A2)");
  expect(await excelUpkeep().strangers()).toEqual([]);
});

it("the file that Excel looked for our functions in is left out", async () => {
  const damaged = ["[2]!", "'C:\\Anna''s\\fairbed.xlam'!", "Book1.xlam!"].map((file) => [
    `=SUM('Last year'!A1,${file}_xldudf_FAIRBED_UPDOWN(A1,A2))`,
  ]);
  await openExcel({ Trial: damaged });
  const found = await excelUpkeep().strangers();
  expect(found.map(({ formula }) => formula)).toEqual(damaged.map(() => "=SUM('Last year'!A1,FAIRBED.UPDOWN(A1,A2))"));
});

it("a table is replaced by what it shows, texts as texts, and its formula comes back", async () => {
  const { excel } = await openExcel(sheets);
  const table = [
    ["Per plant", 4.5],
    ["2/3", ""],
  ];
  excel.book.spills.set("Trial!C2", { ...cell(1, 2), rows: 2, columns: 2 });
  fill(excel.book, cell(1, 2), table);
  excel.book.sheets.get("Trial")?.set("1,2", { value: "Per plant", formula, format: "General", bold: false });
  const kept = await excelUpkeep().keepAsText("Trial", "C2");
  expect(kept).toEqual({ sheet: "Trial", address: "C2:D3", formula });
  expect(contentOf(excel.book, cell(1, 2))).toMatchObject({ formula: "", value: "Per plant" });
  expect(contentOf(excel.book, cell(2, 2)).value).toBe("2/3");
  if (kept !== null) await excelUpkeep().bringBack(kept);
  expect(contentOf(excel.book, cell(1, 2)).formula).toBe(formula);
  expect(contentOf(excel.book, cell(2, 2)).value).toBe(null);
});

it("a cell without a formula is left as it is, a protected one is told", async () => {
  const { excel } = await openExcel(sheets);
  expect(await excelUpkeep().keepAsText("Trial", "A1")).toBe(null);
  excel.book.protectedSheets.add("Trial");
  await expect(excelUpkeep().keepAsText("Trial", "C2")).rejects.toEqual({ trouble: "protected", where: "C2" });
});
