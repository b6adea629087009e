import { expect, it } from "vitest";
import type { Book, BookCell } from "../../../src/files/book";
import { openBook } from "../../../src/files/open/openBook";
import { saveBook } from "../../../src/files/save/saveBook";
import { answered } from "../answered";
import { excelFile, sheetPart, texts } from "../excelFile";
import { knowing } from "../knowing";
import { edited, sheetCells } from "../sheetCells";

const rows =
  '<row r="1" spans="1:3" ht="30" customHeight="1"><c r="A1" s="1" t="s"><v>0</v></c><c r="B1" s="1" t="s"><v>1</v></c></row>' +
  '<row r="2" spans="1:3"><c r="A2"><v>1</v></c><c r="B2"><v>12.5</v></c><c r="C2" s="3"><v>0.25</v></c></row>' +
  '<row r="3" spans="1:3"><c r="A3"><f>SUM(A1:A2)</f><v>1</v></c><c r="B3" s="2"><v>46145</v></c></row>';

/** Things around the cells that nobody here reads: they must come out as they went in. */
const around = {
  before: '<cols><col min="1" max="4" width="20.7109375" style="1" customWidth="1"/></cols>',
  after:
    '<autoFilter ref="A1:C3"/><conditionalFormatting sqref="A1:A9"><cfRule type="cellIs" priority="1" operator="lessThan">' +
    "<formula>0</formula></cfRule></conditionalFormatting>",
};
const chain = {
  "xl/calcChain.xml": '<calcChain xmlns="m"><c r="A3" i="1"/></calcChain>',
  "xl/media/image1.png": "not a picture, but bytes",
  "customXml/item1.xml": "<anything/>",
};

function file(inSheet = rows, more: { from1904?: boolean; parts?: Record<string, string> } = {}) {
  return excelFile({
    sheets: [["The trial", sheetPart(inSheet, around)]],
    ...more,
    parts: { ...chain, ...more.parts },
  });
}

/** Opens, changes cells of the first sheet, saves. */
function changed(bytes: Uint8Array, cells: Record<string, BookCell | undefined>, more: Partial<Book> = {}) {
  const { book } = answered(openBook(bytes, knowing));
  const [first, ...others] = book.sheets;
  if (first === undefined) throw new Error("no sheet");
  const sheets = [edited(first, cells), ...others];
  return answered(saveBook(bytes, { ...book, sheets, ...more }, { knowing }));
}

/** Names of the parts that differ. */
function differing(before: Uint8Array, after: Uint8Array): string[] {
  const [one, other] = [texts(before), texts(after)];
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].filter((name) => one[name] !== other[name]);
}

const sheet1 = "xl/worksheets/sheet1.xml";

it("saves a workbook that nobody changed as it was, part by part", () => {
  const bytes = file();
  expect(differing(bytes, changed(bytes, {}).bytes)).toEqual([]);
});

it("changes the text of the edited cell, and of nothing else", () => {
  const bytes = file();
  const { bytes: after } = changed(bytes, { B2: { value: 13.75 } });
  expect(differing(bytes, after)).toEqual([sheet1]);
  const expected = texts(bytes)
    [sheet1]?.replace('<c r="B2"><v>12.5</v></c>', '<c r="B2"><v>13.75</v></c>')
    .replace('<row r="2" spans="1:3">', '<row r="2">');
  expect(texts(after)[sheet1]).toBe(expected);
});

it("gives an untouched formula its new value, and keeps its text", () => {
  const bytes = file();
  const { bytes: after } = changed(bytes, { A2: { value: 4 }, A3: { value: 4, formula: "=SUM(A1:A2)" } });
  expect(texts(after)[sheet1]).toContain('<c r="A3"><f>SUM(A1:A2)</f><v>4</v></c>');
  expect(differing(bytes, after)).toEqual([sheet1]);
});

it("writes values of every kind, so that they read back the same", () => {
  const cells: Record<string, BookCell> = {
    A2: { value: '<b>& "so"</b> _x0041_ \'=1+1' },
    B2: { value: true },
    C2: { value: { error: "#N/A" }, look: 3 },
    D2: { value: 1e-7 },
    F9: { value: "far\nout " },
    A3: { value: "text", formula: '=IF(A1="<x>","a","b")' },
  };
  const { book } = answered(openBook(changed(file(), cells).bytes, knowing));
  expect(sheetCells(book.sheets[0])).toMatchObject(cells);
});

it("takes the order of calculation out when a formula goes, and nothing else", () => {
  const bytes = file(rows, { parts: withChain() });
  const { bytes: after } = changed(bytes, { A3: { value: 1 } });
  expect(differing(bytes, after).sort()).toEqual([
    "[Content_Types].xml",
    "xl/_rels/workbook.xml.rels",
    "xl/calcChain.xml",
    sheet1,
  ]);
  expect(texts(after)["[Content_Types].xml"]).not.toContain("calcChain");
  expect(texts(after)["xl/_rels/workbook.xml.rels"]).not.toContain("calcChain");
});

function withChain(): Record<string, string> {
  const plain = texts(file());
  const override = '<Override PartName="/xl/calcChain.xml" ContentType="x+xml"/></Types>';
  const relation = '<Relationship Id="rId9" Type="x/calcChain" Target="calcChain.xml"/></Relationships>';
  return {
    "[Content_Types].xml": plain["[Content_Types].xml"]?.replace("</Types>", override) ?? "",
    "xl/_rels/workbook.xml.rels": plain["xl/_rels/workbook.xml.rels"]?.replace("</Relationships>", relation) ?? "",
  };
}

it("stores our calls as Excel does, with their values, and marks them as dynamic", () => {
  const bytes = file();
  const spill = [
    ["change", 0.3],
    ["plants", 8],
  ];
  const { bytes: after } = changed(bytes, {
    D2: { value: 0.3, formula: "=FAIRBED.UPDOWN(A1:A2,B1:B2)" },
    F5: { value: "change", formula: '=FAIRBED.COMPARETWO(A1:A2,B1:B2,"table")', spill },
  });
  const xml = texts(after)[sheet1] ?? "";
  expect(xml).toContain('<c r="D2" cm="1"><f t="array" ref="D2">_xldudf_FAIRBED_UPDOWN(A1:A2,B1:B2)</f><v>0.3</v></c>');
  expect(xml).toContain(
    '<row r="5"><c r="F5" t="str" cm="1"><f t="array" ref="F5:G6">_xldudf_FAIRBED_COMPARETWO(A1:A2,B1:B2,&quot;table&quot;)' +
      '</f><v>change</v></c><c r="G5"><v>0.3</v></c></row><row r="6">',
  );
  expect(texts(after)["xl/metadata.xml"]).toContain('<metadataType name="XLDAPR"');
  expect(texts(after)["[Content_Types].xml"]).toContain('PartName="/xl/metadata.xml"');
  expect(xml).toContain('<dimension ref="A1:G9"/>');
  const { book } = answered(openBook(after, knowing));
  expect(sheetCells(book.sheets[0]).F5).toEqual({
    value: "change",
    formula: '=FAIRBED.COMPARETWO(A1:A2,B1:B2,"table")',
    spill,
  });
});

it("mends our calls where the file has them damaged, and leaves other add-ins' calls alone", () => {
  const stored = ["[2]!_xldudf_FAIRBED_UPDOWN(A1,B1)", "_xldudf_fairbed_updown(A1,B1)", "_xldudf_OTHER_MAGIC(A9)"];
  const cells = stored.map((text, at) => `<c r="${"ABC"[at]}7"><f>${text}</f><v>0.3</v></c>`);
  const bytes = file(`${rows}<row r="7">${cells.join("")}</row>`);
  const xml = texts(changed(bytes, {}).bytes)[sheet1] ?? "";
  for (const letter of "AB") {
    expect(xml).toContain(`<c r="${letter}7" cm="1"><f t="array" ref="${letter}7">_xldudf_FAIRBED_UPDOWN(A1,B1)</f>`);
  }
  expect(xml).toContain(cells[2]);
});

it("asks Excel to calculate anew when what only Excel works out may be out of date", () => {
  const bytes = file(`${rows}<row r="7"><c r="A7"><f>CUBEVALUE(A2)</f><v>7</v></c></row>`);
  expect(texts(changed(bytes, { A2: { value: 2 } }).bytes)["xl/workbook.xml"]).toContain(
    '<calcPr calcId="191029" fullCalcOnLoad="1"/>',
  );
  expect(differing(bytes, changed(bytes, {}).bytes)).toEqual([]);
});

it("writes out a shared formula when the cell that holds its text is edited", () => {
  const shared =
    '<row r="1"><c r="A1"><f t="shared" ref="A1:A3" si="0">B1*2</f><v>2</v></c></row>' +
    '<row r="2"><c r="A2"><f t="shared" si="0"/><v>4</v></c></row><row r="3"><c r="A3"><f t="shared" si="0"/><v>6</v></c></row>';
  const xml = texts(changed(file(shared), { A1: { value: 9 } }).bytes)[sheet1];
  expect(xml).toContain('<c r="A1"><v>9</v></c>');
  expect(xml).toContain('<c r="A2"><f>B2*2</f><v>4</v></c>');
  expect(xml).toContain('<c r="A3"><f>B3*2</f><v>6</v></c>');
});

it("counts an edited date from 1904 where the file does", () => {
  const bytes = file(rows, { from1904: true });
  const { bytes: after } = changed(bytes, { B3: { value: 47609, look: 2 } });
  expect(texts(after)[sheet1]).toContain('<c r="B3" s="2"><v>46147</v></c>');
});

it("adds a look that the file does not have, like the one that the cell had", () => {
  const bytes = file();
  const { book } = answered(openBook(bytes, knowing));
  const looks = [...book.looks, { ...book.looks[1], pattern: "0.000", bold: false, fill: "#aabbcc" }];
  const { bytes: after } = changed(bytes, { B1: { value: 1, look: 6 } }, { looks });
  expect(differing(bytes, after)).toEqual([sheet1, "xl/styles.xml"]);
  const again = answered(openBook(after, knowing)).book;
  expect(again.looks[6]).toEqual({
    pattern: "0.000",
    fill: "#aabbcc",
    wrap: true,
    across: "center",
    down: "middle",
  });
  expect(again.looks.slice(0, 6)).toEqual(book.looks);
});

it("saves new sheets, merges, widths and names", () => {
  const bytes = file();
  const { book } = answered(openBook(bytes, knowing));
  const report = {
    name: "Report & more",
    hidden: false,
    rows: new Map([[0, new Map([[0, { value: "Straw", look: 1 }]])]]),
    merges: [{ top: 0, left: 0, bottom: 0, right: 2 }],
    widths: new Map([[0, 145]]),
  };
  const [trial] = book.sheets;
  if (trial === undefined) throw new Error("no sheet");
  const names = [{ name: "straw", reference: "'The trial'!$B$2:$B$9" }];
  const sheets = [{ ...trial, merges: report.merges, widths: new Map([...trial.widths, [1, 70]]) }, report];
  const { bytes: after } = answered(saveBook(bytes, { ...book, sheets, names }, { knowing }));
  expect(differing(bytes, after).sort()).toEqual([
    "[Content_Types].xml",
    "xl/_rels/workbook.xml.rels",
    "xl/workbook.xml",
    sheet1,
    "xl/worksheets/sheet2.xml",
  ]);
  const again = answered(openBook(after, knowing)).book;
  expect(again.names).toEqual(names);
  expect(again.sheets[1]).toEqual(report);
  expect(again.sheets[0]).toEqual(sheets[0]);
  expect(texts(after)[sheet1]).toContain('</sheetData><autoFilter ref="A1:C3"/><mergeCells count="1">');
});

it("makes a file of a workbook that comes from none", () => {
  const sheet = {
    name: "Harvest",
    hidden: false,
    rows: new Map([
      [
        0,
        new Map([
          [0, { value: 0.25, look: 1 }],
          [1, { value: 0.3, formula: "=FAIRBED.UPDOWN(A1)" }],
        ]),
      ],
    ]),
    merges: [],
    widths: new Map([[0, 100]]),
  };
  const looks = [{}, { pattern: "0.0%", bold: true, ink: "#c00000" }];
  const { bytes } = answered(saveBook(null, { sheets: [sheet], looks, names: [] }, { knowing }));
  const again = answered(openBook(bytes, knowing)).book;
  expect(again.sheets).toEqual([sheet]);
  expect(again.looks[1]).toEqual(looks[1]);
});

it("keeps the value of a formula that has names of its own, and says so", () => {
  const { bytes, onlyValues } = changed(file(), { D2: { value: 5, formula: "=LET(x,5,x)" } });
  expect(onlyValues).toEqual(["The trial!D2"]);
  expect(texts(bytes)[sheet1]).toContain('<c r="D2"><v>5</v></c>');
});

it("never points outside the file when it saves", () => {
  const link =
    '<Relationships><Relationship Id="rId1" Type="x/externalLinkPath" Target="https://example.org/x.xlsx" TargetMode="External"/></Relationships>';
  const bytes = file(rows, { parts: { "xl/externalLinks/_rels/externalLink1.xml.rels": link } });
  expect(differing(bytes, changed(bytes, { A2: { value: 2 } }).bytes)).toEqual([sheet1]);
});
