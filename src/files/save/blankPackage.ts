import { partOf } from "../xml/parts";
import type { Package } from "../zip/openPackage";

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packages = "http://schemas.openxmlformats.org/package/2006";
const kinds = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** A sheet without cells. */
export const blankSheet = `${head}<worksheet xmlns="${main}" xmlns:r="${office}"><sheetData/></worksheet>`;

/** Styles with the usual look only. */
export const blankStyles =
  `${head}<styleSheet xmlns="${main}"><fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font>` +
  '</fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/>' +
  '</fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="1">' +
  '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs><cellStyles count="1">' +
  '<cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>';

const texts: readonly (readonly [string, string])[] = [
  [
    "[Content_Types].xml",
    `${head}<Types xmlns="${packages}/content-types">` +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      '<Default Extension="xml" ContentType="application/xml"/>' +
      `<Override PartName="/xl/workbook.xml" ContentType="${kinds}.sheet.main+xml"/></Types>`,
  ],
  [
    "_rels/.rels",
    `${head}<Relationships xmlns="${packages}/relationships">` +
      `<Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  ],
  ["xl/workbook.xml", `${head}<workbook xmlns="${main}" xmlns:r="${office}"><sheets/></workbook>`],
  ["xl/_rels/workbook.xml.rels", `${head}<Relationships xmlns="${packages}/relationships"/>`],
];

/** A workbook without sheets and styles, to put them into; on its own no spreadsheet opens it. */
export function blankPackage(): Package {
  return new Map(texts.map(([name, text]) => [name, partOf(text)]));
}
