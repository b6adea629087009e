import { readFileSync } from "node:fs";
import { beforeAll, expect, it } from "vitest";
import type { BookCell } from "../../../src/files/book";
import { openBook } from "../../../src/files/open/openBook";
import { saveBook } from "../../../src/files/save/saveBook";
import { answered } from "../answered";
import { texts } from "../excelFile";
import { knowing } from "../knowing";
import { edited, sheetCells } from "../sheetCells";
import { converted } from "./convert";

/** Commas, quotes, UTF-8, from the first row, as shown: LibreOffice's own numbers for a table of text. */
const asCsv = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true";

let file: Uint8Array;
beforeAll(() => {
  const plan = readFileSync(new URL("harvest.fods", import.meta.url));
  file = converted(plan, "fods", "xlsx:Calc MS Excel 2007 XML");
}, 300_000);

function csvOf(bytes: Uint8Array): string {
  return new TextDecoder().decode(converted(bytes, "xlsx", asCsv));
}

function opened() {
  return answered(openBook(file, knowing));
}

it("reads what LibreOffice writes: values, formulas, dates, merges, widths, bold, fills", () => {
  const { book, leftAlone } = opened();
  const [harvest, other] = book.sheets;
  const cells = sheetCells(harvest);
  expect(leftAlone).toEqual([]);
  expect(cells).toMatchObject({
    A1: { value: "Marlpit Corner & more" },
    C1: { value: 46145 },
    A2: { value: 12.5 },
    B2: { value: 9.25 },
    C2: { value: 21.75, formula: "=SUM(A2:B2)" },
    A3: { value: 'Größe, "ö"' },
    C3: { value: 14, formula: "=Other!A1*2" },
  });
  expect(book.looks[cells.A1?.look ?? 0]).toMatchObject({ bold: true, fill: "#fff2cc" });
  expect(book.looks[cells.C1?.look ?? 0]?.pattern).toMatch(/^yyyy\\?-mm\\?-dd$/i);
  expect(harvest?.merges).toEqual([{ top: 0, left: 0, bottom: 0, right: 1 }]);
  // 5 cm are 189 pixels at 96 an inch; LibreOffice counts them in digits of its own letters, which are narrower.
  expect(Math.abs((harvest?.widths.get(0) ?? 0) - 189)).toBeLessThan(14);
  expect(sheetCells(other)).toMatchObject({ A1: { value: 7 } });
});

it("changes one cell of LibreOffice's file: only its sheet differs, and LibreOffice reads the rest as before", () => {
  const { book } = opened();
  const [harvest, ...others] = book.sheets;
  if (harvest === undefined) throw new Error("no sheet");
  const sheets = [edited(harvest, { B2: { ...sheetCells(harvest).B2, value: 10.25 } }), ...others];
  const { bytes } = answered(saveBook(file, { ...book, sheets }, { knowing }));
  const [before, after] = [texts(file), texts(bytes)];
  expect(Object.keys(after)).toEqual(Object.keys(before));
  expect(Object.keys(after).filter((name) => after[name] !== before[name])).toEqual(["xl/worksheets/sheet1.xml"]);
  const [was, is] = [csvOf(file).split("\n"), csvOf(bytes).split("\n")];
  expect(was[1]).toBe("12.5,9.25,21.75");
  expect(is[1]).toMatch(/^12.5,10.25,/);
  expect(is.filter((_, row) => row !== 1)).toEqual(was.filter((_, row) => row !== 1));
}, 120_000);

it("writes a new workbook, its texts and looks, in a way that LibreOffice reads", () => {
  const cells: Record<string, BookCell> = {
    A1: { value: "=1+1", look: 1 },
    B1: { value: 0.25, look: 1 },
    A2: { value: 0.25, formula: "=SUM(B1:B1)" },
    B2: { value: "ä & <b>" },
  };
  const sheet = { name: "Report", hidden: false, rows: new Map(), merges: [], widths: new Map([[0, 120]]) };
  const looks = [{}, { bold: true, pattern: "0.0%" }];
  const { bytes } = answered(saveBook(null, { sheets: [edited(sheet, cells)], looks, names: [] }, { knowing }));
  expect(csvOf(bytes)).toBe("=1+1,25.0%\n0.25,ä & <b>\n");
}, 120_000);
