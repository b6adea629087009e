import { type CellObject, read } from "@e965/xlsx";
import type { Cell } from "../../nouns/cell";
import { partOf } from "../xml/parts";
import { bundle } from "../zip/closePackage";

const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const main = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';

/**
 * The values of a sheet's cells, row by row; rows and cells that hold nothing are missing. The reader is given this
 * sheet and the workbook's texts under names of our own, and nothing else of the file: no names, links or programs.
 *
 * @param sheet the sheet's part
 * @param strings the part with the workbook's texts, if it has one
 * @returns a function from a place to the value there, which knows no errors. Throws where the parts cannot be read
 */
export function sheetValues(sheet: Uint8Array, strings: Uint8Array | undefined) {
  const bytes = bundle(
    new Map([...frame(strings !== undefined), ["xl/worksheets/sheet1.xml", sheet], ...texts(strings)]),
  );
  const book = read(bytes, { type: "array", dense: true, cellHTML: false, cellText: false, cellFormula: false });
  const rows = book.Sheets.sheet?.["!data"] ?? [];
  return (row: number, column: number): Cell => cellValue(rows[row]?.[column]);
}

function texts(strings: Uint8Array | undefined): [string, Uint8Array][] {
  return strings === undefined ? [] : [["xl/sharedStrings.xml", strings]];
}

function cellValue(cell: CellObject | undefined): Cell {
  const value = cell?.v;
  return value === undefined || value === "" || value instanceof Date ? null : value;
}

/** The smallest workbook around one sheet. */
function frame(withTexts: boolean): [string, Uint8Array][] {
  const kinds = ["sheet.main", "worksheet", ...(withTexts ? ["sharedStrings"] : [])];
  const names = ["xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/sharedStrings.xml"];
  const overrides = kinds.map((kind, at) => `<Override PartName="/${names[at]}" ContentType="${main}.${kind}+xml"/>`);
  const relation = (id: number, kind: string, target: string) =>
    `<Relationship Id="rId${id}" Type="${office}/${kind}" Target="${target}"/>`;
  const relations = (inner: string) =>
    `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inner}</Relationships>`;
  const inBook = relation(1, "worksheet", "worksheets/sheet1.xml");
  const inTexts = withTexts ? relation(2, "sharedStrings", "sharedStrings.xml") : "";
  const types = "http://schemas.openxmlformats.org/package/2006/content-types";
  const xml = '<Default Extension="xml" ContentType="application/xml"/>';
  const rels = `<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>`;
  const workbook = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  const parts: [string, string][] = [
    ["[Content_Types].xml", `${head}<Types xmlns="${types}">${rels}${xml}${overrides.join("")}</Types>`],
    ["_rels/.rels", relations(relation(1, "officeDocument", "xl/workbook.xml"))],
    ["xl/_rels/workbook.xml.rels", relations(inBook + inTexts)],
    [
      "xl/workbook.xml",
      `${head}<workbook xmlns="${workbook}" xmlns:r="${office}">` +
        '<sheets><sheet name="sheet" sheetId="1" r:id="rId1"/></sheets></workbook>',
    ],
  ];
  return parts.map(([name, text]) => [name, partOf(text)]);
}
