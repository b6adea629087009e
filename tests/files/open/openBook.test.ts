import { expect, it } from "vitest";
import { mostCells } from "../../../src/files/mostCells";
import { openBook } from "../../../src/files/open/openBook";
import { addressOf } from "../../../src/files/xml/address";
import { answered } from "../answered";
import { excelFile, sheetPart } from "../excelFile";
import { knowing } from "../knowing";
import { sheetCells } from "../sheetCells";

function opened(bytes: Uint8Array) {
  return answered(openBook(bytes, knowing));
}

const trial = sheetPart(
  '<row r="1" spans="1:3" x14ac:dyDescent="0.25"><c r="A1" s="1" t="s"><v>0</v></c><c r="B1" s="1" t="s"><v>1</v></c>' +
    '<c r="C1" t="s"><v>3</v></c><c r="D1" t="s"><v>4</v></c></row>' +
    '<row r="2" spans="1:3"><c r="A2"><v>1</v></c><c r="B2"><v>12.5</v></c><c r="C2" s="3"><v>0.25</v></c></row>' +
    '<row r="4" spans="1:3"><c r="A4" t="b"><v>1</v></c><c r="B4" t="e"><v>#N/A</v></c><c r="C4" s="2"><v>46145</v></c>' +
    '<c r="D4" t="inlineStr"><is><t>inline</t></is></c></row>' +
    '<row r="5"><c r="A5" s="4"/><c r="B5" t="str"><f>IF(A1="&lt;","a","&amp;lt;")</f><v>&amp;lt;</v></c></row>',
  {
    before:
      '<cols><col min="1" max="1" width="20.7109375" customWidth="1"/><col min="3" max="4" width="5" hidden="1"/></cols>',
    after: '<mergeCells count="1"><mergeCell ref="A7:C8"/></mergeCells>',
  },
);

it("reads values of every kind, merges, widths and looks from a file as Excel writes it", () => {
  const { book, leftAlone } = opened(excelFile({ sheets: [["The trial", trial]] }));
  const [sheet] = book.sheets;
  expect(sheet?.name).toBe("The trial");
  expect(sheetCells(sheet)).toEqual({
    A1: { value: "Bed", look: 1 },
    B1: { value: "Straw", look: 1 },
    C1: { value: "När & <så>" },
    D1: { value: "two parts" },
    A2: { value: 1 },
    B2: { value: 12.5 },
    C2: { value: 0.25, look: 3 },
    A4: { value: true },
    B4: { value: { error: "#N/A" } },
    C4: { value: 46145, look: 2 },
    D4: { value: "inline" },
    A5: { value: null, look: 4 },
    B5: { value: "&lt;", formula: '=IF(A1="<","a","&lt;")' },
  });
  expect(sheet?.merges).toEqual([{ top: 6, left: 0, bottom: 7, right: 2 }]);
  // 145 pixels are 20 digits of 7 and 5 for the edges: ECMA-376 part 1, 18.3.1.13.
  expect([...(sheet?.widths ?? [])]).toEqual([
    [0, 145],
    [2, 0],
    [3, 0],
  ]);
  expect(leftAlone).toEqual([]);
});

it("reads looks: bold, fills of a theme, ink, dates that cannot be misread", () => {
  const { book } = opened(excelFile({ sheets: [["S", trial]] }));
  expect(book.looks).toEqual([
    {},
    // Excel shows the sixth accent, 80 % lighter, of its 2013 theme as E2EFDA (printed in its colour picker).
    { bold: true, fill: "#e2efda", wrap: true, across: "center", down: "middle" },
    { pattern: "yyyy-mm-dd" },
    { pattern: "0.00%" },
    { italic: true, ink: "#c00000", fill: "#ffff00" },
    { pattern: "dd\\.mm\\.yyyy" },
  ]);
});

it("counts dates from 1900, whatever the file counts from", () => {
  const rows = '<row r="1"><c r="A1" s="2"><v>44683</v></c><c r="B1"><v>44683</v></c></row>';
  const { book } = opened(excelFile({ from1904: true, sheets: [["S", sheetPart(rows)]] }));
  // 3 May 2026 is 46145 counted from 1900 and 44683 counted from 1904.
  expect(sheetCells(book.sheets[0])).toEqual({ A1: { value: 46145, look: 2 }, B1: { value: 44683 } });
});

it("reads our calls in Excel's form, in damaged forms and in small letters", () => {
  const stored = [
    "_xldudf_FAIRBED_UPDOWN(A1,B1)",
    "[2]!_xldudf_FAIRBED_UPDOWN(A1,B1)",
    "'C:\\Users\\Anna's Add-Ins\\OLD.XLAM'!_xldudf_FAIRBED_UPDOWN(A1,B1)".replace("Anna's", "Anna''s"),
    "_xldudf_fairbed_updown(A1,B1)",
    "fairbed.updown(A1,B1)",
    "1+_xldudf_FAIRBED_UPDOWN(A1,B1)",
  ];
  const row = stored.map((text, at) => `<c r="${addressOf({ row: 0, column: at })}"><f>${text}</f><v>0.3</v></c>`);
  const { book, leftAlone } = opened(excelFile({ sheets: [["S", sheetPart(`<row r="1">${row.join("")}</row>`)]] }));
  const formulas = Object.values(sheetCells(book.sheets[0])).map(({ formula }) => formula);
  expect(formulas).toEqual([...Array(5).fill("=FAIRBED.UPDOWN(A1,B1)"), "=1+FAIRBED.UPDOWN(A1,B1)"]);
  expect(leftAlone).toEqual([]);
});

it("leaves other add-ins' calls, unknown functions, tables and other files alone, and lists them", () => {
  const stored = [
    "_xldudf_OTHER_MAGIC(A9)",
    "CUBEVALUE(A9)",
    "SUM(Table1[kg])",
    "[1]Sheet1!A1",
    "SUM('[1]My sheet'!A1)",
  ];
  const row = stored.map((text, at) => `<c r="${addressOf({ row: 0, column: at })}"><f>${text}</f><v>7</v></c>`);
  const { book, leftAlone } = opened(excelFile({ sheets: [["S", sheetPart(`<row r="1">${row.join("")}</row>`)]] }));
  expect(Object.values(sheetCells(book.sheets[0]))).toEqual(Array(5).fill({ value: 7 }));
  expect(leftAlone).toEqual(["S!A1", "S!B1", "S!C1", "S!D1", "S!E1"]);
});

it("reads shared formulas and formulas that fill a block", () => {
  const rows =
    '<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="0">IF(B1="B1",SUM(C:C),$D$1)</f><v>3</v></c></row>' +
    '<row r="2"><c r="A2"><f t="shared" si="0"/><v>4</v></c></row>' +
    '<row r="3"><c r="A3" cm="1" t="str"><f t="array" ref="A3:B4">_xldudf_FAIRBED_UPDOWN(D1:D9)</f><v>change</v></c>' +
    '<c r="B3"><v>0.3</v></c></row><row r="4"><c r="A4"><v>1</v></c><c r="B4" s="3"><v>2</v></c></row>';
  const { book } = opened(excelFile({ sheets: [["S", sheetPart(rows)]] }));
  expect(sheetCells(book.sheets[0])).toEqual({
    A1: { value: 3, formula: '=IF(B1="B1",SUM(C:C),$D$1)' },
    A2: { value: 4, formula: '=IF(B2="B1",SUM(C:C),$D$1)' },
    A3: {
      value: "change",
      formula: "=FAIRBED.UPDOWN(D1:D9)",
      spill: [
        ["change", 0.3],
        [1, 2],
      ],
    },
    B4: { value: null, look: 3 },
  });
});

it("reads tags with a prefix, and names for blocks of cells", () => {
  const sheet =
    '<x:worksheet xmlns:x="m"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>5</x:v></x:c></x:row></x:sheetData></x:worksheet>';
  const inWorkbook =
    '<definedNames><definedName name="straw">S!$B$2:$B$9</definedName><definedName name="tax">0.2</definedName>' +
    '<definedName name="_xlnm.Print_Area" localSheetId="0">S!$A$1</definedName></definedNames>';
  const { book } = opened(excelFile({ sheets: [["S", sheet]], inWorkbook }));
  expect(sheetCells(book.sheets[0])).toEqual({ A1: { value: 5 } });
  expect(book.names).toEqual([{ name: "straw", reference: "S!$B$2:$B$9" }]);
});

it("shows names made to poison objects as the texts they are", () => {
  const rows = '<row r="1"><c r="A1" t="inlineStr"><is><t>__proto__</t></is></c></row>';
  const inWorkbook = '<definedNames><definedName name="__proto__">constructor!$A$1</definedName></definedNames>';
  const sheets = ["__proto__", "constructor", "toString"].map((name) => [name, sheetPart(rows)] as const);
  const { book } = opened(excelFile({ sheets, inWorkbook }));
  expect(book.sheets.map(({ name }) => name)).toEqual(["__proto__", "constructor", "toString"]);
  expect(book.sheets.map((sheet) => sheetCells(sheet))).toEqual(Array(3).fill({ A1: { value: "__proto__" } }));
  expect(book.names).toEqual([{ name: "__proto__", reference: "constructor!$A$1" }]);
  expect(Object.keys(Object.prototype)).toEqual([]);
});

it("counts a million rows and refuses them before it reads one", () => {
  const rows = "<row><c><v>1</v></c></row>".repeat(1_000_000);
  expect(openBook(excelFile({ sheets: [["S", sheetPart(rows)]] }), knowing)).toEqual({
    problem: "too-many-cells",
    cells: 1_000_000,
    limit: mostCells,
  });
});

it("takes no formula's word that it fills a whole sheet", () => {
  const rows = '<row r="1"><c r="A1"><f t="array" ref="A1:XFD1048576">SUM(1)</f><v>1</v></c></row>';
  expect(openBook(excelFile({ sheets: [["S", sheetPart(rows)]] }), knowing)).toEqual({ problem: "damaged" });
});
