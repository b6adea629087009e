import { expect, it } from "vitest";
import type { BookCell, BookChart, BookSheet } from "../../../src/files/book";
import { openBook } from "../../../src/files/open/openBook";
import { saveBook } from "../../../src/files/save/saveBook";
import { relationsOf } from "../../../src/files/xml/parts";
import { answered } from "../answered";
import { texts } from "../excelFile";
import { knowing } from "../knowing";
import { converted } from "../office/convert";
import { edited, sheetCells } from "../sheetCells";

const chart: BookChart = {
  title: "Average <per> plant & year",
  pattern: "0.0",
  bars: [
    { name: 'Bare "soil"', figure: 3063.143, usual: true },
    { name: "Straw & co", figure: 4350.571, usual: false },
  ],
};
const cells: Record<string, BookCell> = {
  A1: { value: "What straw gave" },
  A3: { value: null, chart },
  H3: { value: "in one cell", chart: { ...chart, bars: chart.bars.map((bar) => ({ ...bar, figure: -bar.figure })) } },
};
const place = { top: 2, left: 0, bottom: 8, right: 4 };

function sheetOf(name: string, changes: Record<string, BookCell>): BookSheet {
  return edited({ name, hidden: false, rows: new Map(), merges: [place], widths: new Map() }, changes);
}

const saved = (original: Uint8Array | null, sheets: readonly BookSheet[]) =>
  answered(saveBook(original, { sheets, looks: [{}], names: [] }, { knowing })).bytes;
const report = () => saved(null, [sheetOf("Report", cells)]);

it("writes each chart as one of the file's own, over its merge, with its names and figures", () => {
  const parts = texts(report());
  const [first = "", second = ""] = ["xl/charts/chart1.xml", "xl/charts/chart2.xml"].map((path) => parts[path] ?? "");
  expect(first).toContain("<a:t>Average &lt;per&gt; plant &amp; year</a:t>");
  expect(first).toContain('<c:pt idx="0"><c:v>Bare &quot;soil&quot;</c:v></c:pt>');
  expect(first).toContain('<c:formatCode>0.0</c:formatCode><c:ptCount val="2"/><c:pt idx="0"><c:v>3063.143</c:v>');
  expect(first).toContain('<c:min val="0"/>');
  expect(second).not.toContain("<c:min ");
  expect(parts["xl/drawings/drawing1.xml"]).toContain(
    "<xdr:to><xdr:col>5</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>9</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to>",
  );
});

it("prints as wide as a page, where a sheet without charts is left as it is", () => {
  const sheets = [sheetOf("Report", cells), sheetOf("Plain", { A1: { value: 1 } })];
  const [withCharts, without] = [1, 2].map((number) => texts(saved(null, sheets))[`xl/worksheets/sheet${number}.xml`]);
  expect(withCharts).toMatch(/<worksheet [^>]*><sheetPr><pageSetUpPr fitToPage="1"\/><\/sheetPr>/);
  expect(withCharts).toMatch(
    /<pageSetup orientation="landscape" fitToHeight="0"\/><drawing r:id="rId1"\/><\/worksheet>$/,
  );
  expect(without).not.toMatch(/pageSetUpPr|drawing/);
});

it("every part is named with its type, and every relation leads to a part", () => {
  const parts = new Map(Object.entries(texts(report())).map(([name, text]) => [name, new TextEncoder().encode(text)]));
  const types = new TextDecoder().decode(parts.get("[Content_Types].xml"));
  for (const path of [...parts.keys()].filter((name) => /drawing|chart/.test(name) && !name.endsWith(".rels"))) {
    expect(types).toContain(`PartName="/${path}"`);
  }
  const sheet = relationsOf(parts, "xl/worksheets/sheet1.xml");
  expect(sheet.map(({ path }) => path)).toEqual(["xl/drawings/drawing1.xml"]);
  const charts = relationsOf(parts, "xl/drawings/drawing1.xml");
  expect(charts.map(({ path }) => path)).toEqual(["xl/charts/chart1.xml", "xl/charts/chart2.xml"]);
  for (const { path } of [...sheet, ...charts]) expect(parts.has(path)).toBe(true);
});

it("a second report beside one of the file's own: neither chart takes the other's place", () => {
  const before = report();
  const { book } = answered(openBook(before, knowing));
  const after = texts(saved(before, [...book.sheets, sheetOf("Report 2", cells)]));
  for (const [path, text] of Object.entries(texts(before))) {
    if (/drawing|chart/.test(path)) expect(after[path], path).toBe(text);
  }
  expect(Object.keys(after)).toContain("xl/charts/chart4.xml");
  expect(after["xl/drawings/_rels/drawing2.xml.rels"]).toContain("/xl/charts/chart3.xml");
});

it("opens again with its cells as they were", () => {
  const { book } = answered(openBook(report(), knowing));
  expect(sheetCells(book.sheets[0])).toEqual({ A1: { value: "What straw gave" }, H3: { value: "in one cell" } });
  expect(book.sheets[0]?.merges).toEqual([place]);
});

it("LibreOffice reads the charts: names, figures and title come out of it again", () => {
  const again = texts(converted(report(), "xlsx", "xlsx:Calc MS Excel 2007 XML"));
  const charts = Object.entries(again).filter(([path]) => /charts\/chart\d+\.xml$/.test(path));
  expect(charts).toHaveLength(2);
  const first = charts.map(([, text]) => text).find((text) => !text.includes("-4350.571")) ?? "";
  expect(first).toContain("Straw &amp; co");
  expect(first).toContain("4350.571");
  expect(first.replaceAll(/<[^>]*>/g, "")).toContain("Average &lt;per&gt; plant &amp; year");
  expect(first).toContain('<c:barDir val="bar"/>');
}, 120_000);
