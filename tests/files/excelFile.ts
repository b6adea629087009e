import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** The parts of a workbook as texts, by name. */
export type Texts = Readonly<Record<string, string>>;

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n';
const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packages = "http://schemas.openxmlformats.org/package/2006";
const kinds = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** Packs parts as a file. */
function packed(parts: Texts): Uint8Array {
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));
}

/** The parts of a file as texts. */
export function texts(bytes: Uint8Array): Texts {
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
}

/** A sheet's part in the shape in which Excel writes it. */
export function sheetPart(rows: string, { before = "", after = "" } = {}): string {
  return (
    `${head}<worksheet xmlns="${main}" xmlns:r="${office}" ` +
    'xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006" mc:Ignorable="x14ac xr xr2 xr3" ' +
    'xmlns:x14ac="http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac" ' +
    'xmlns:xr="http://schemas.microsoft.com/office/spreadsheetml/2014/revision" ' +
    'xmlns:xr2="http://schemas.microsoft.com/office/spreadsheetml/2015/revision2" ' +
    'xmlns:xr3="http://schemas.microsoft.com/office/spreadsheetml/2016/revision3" ' +
    'xr:uid="{5B0E6C1C-4B1D-4A43-9A52-7B6A6D0B9E11}"><dimension ref="A1:F9"/>' +
    '<sheetViews><sheetView tabSelected="1" workbookViewId="0"/></sheetViews>' +
    `<sheetFormatPr defaultRowHeight="15" x14ac:dyDescent="0.25"/>${before}<sheetData>${rows}</sheetData>${after}` +
    '<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/></worksheet>'
  );
}

const strings = ["Bed", "Straw", "Bare", "När & <så>"];

/** Styles: 1 bold on a theme's colour, 2 a date, 3 a percent, 4 red letters on yellow, 5 a date of one's own. */
const styles =
  `${head}<styleSheet xmlns="${main}"><numFmts count="1"><numFmt numFmtId="164" formatCode="dd\\.mm\\.yyyy"/></numFmts>` +
  '<fonts count="3" x14ac:knownFonts="1" xmlns:x14ac="http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac">' +
  '<font><sz val="11"/><color theme="1"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font>' +
  '<font><b/><sz val="11"/><color theme="1"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font>' +
  '<font><i/><sz val="11"/><color rgb="FFC00000"/><name val="Calibri"/><family val="2"/></font></fonts>' +
  '<fills count="4"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>' +
  '<fill><patternFill patternType="solid"><fgColor theme="9" tint="0.79998168889431442"/><bgColor indexed="64"/>' +
  '</patternFill></fill><fill><patternFill patternType="solid"><fgColor rgb="FFFFFF00"/><bgColor indexed="64"/>' +
  '</patternFill></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="6">' +
  '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>' +
  '<xf numFmtId="0" fontId="1" fillId="2" borderId="0" xfId="0" applyFont="1" applyFill="1" applyAlignment="1">' +
  '<alignment horizontal="center" vertical="center" wrapText="1"/></xf>' +
  '<xf numFmtId="14" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>' +
  '<xf numFmtId="10" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>' +
  '<xf numFmtId="0" fontId="2" fillId="3" borderId="0" xfId="0" applyFont="1" applyFill="1"/>' +
  '<xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs>' +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles><dxfs count="0"/></styleSheet>';

/** What differs from one crafted workbook to the next. */
export interface Crafted {
  /** The sheets' parts by name, in order. */
  readonly sheets: readonly (readonly [string, string])[];
  readonly from1904?: boolean;
  /** Further elements of the workbook's part, behind its sheets. */
  readonly inWorkbook?: string;
  /** Further parts. */
  readonly parts?: Texts;
}

/** A workbook put together tag by tag in the shape in which Excel writes it, as texts. */
function excelTexts({ sheets, from1904 = false, inWorkbook = "", parts = {} }: Crafted): Texts {
  const numbered = sheets.map(([name, text], at) => ({ name, text, id: at + 1 }));
  const relation = (id: number, kind: string, target: string) =>
    `<Relationship Id="rId${id}" Type="${office}/${kind}" Target="${target}"/>`;
  const override = (part: string, kind: string) =>
    `<Override PartName="/xl/${part}" ContentType="${kinds}.${kind}+xml"/>`;
  const count = sheets.length;
  return {
    "[Content_Types].xml":
      `${head}<Types xmlns="${packages}/content-types">` +
      `<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
      `<Default Extension="xml" ContentType="application/xml"/>${override("workbook.xml", "sheet.main")}` +
      numbered.map(({ id }) => override(`worksheets/sheet${id}.xml`, "worksheet")).join("") +
      `${override("styles.xml", "styles")}${override("sharedStrings.xml", "sharedStrings")}</Types>`,
    "_rels/.rels": `${head}<Relationships xmlns="${packages}/relationships">${relation(1, "officeDocument", "xl/workbook.xml")}</Relationships>`,
    "xl/workbook.xml":
      `${head}<workbook xmlns="${main}" xmlns:r="${office}"><fileVersion appName="xl" lastEdited="7" lowestEdited="7" ` +
      `rupBuild="28526"/><workbookPr${from1904 ? ' date1904="1"' : ""} defaultThemeVersion="202300"/><bookViews>` +
      '<workbookView xWindow="-120" yWindow="-120" windowWidth="29040" windowHeight="15720"/></bookViews><sheets>' +
      numbered.map(({ name, id }) => `<sheet name="${name}" sheetId="${id}" r:id="rId${id}"/>`).join("") +
      `</sheets>${inWorkbook}<calcPr calcId="191029"/></workbook>`,
    "xl/_rels/workbook.xml.rels":
      `${head}<Relationships xmlns="${packages}/relationships">` +
      numbered.map(({ id }) => relation(id, "worksheet", `worksheets/sheet${id}.xml`)).join("") +
      `${relation(count + 1, "styles", "styles.xml")}${relation(count + 2, "sharedStrings", "sharedStrings.xml")}</Relationships>`,
    ...Object.fromEntries(numbered.map(({ id, text }) => [`xl/worksheets/sheet${id}.xml`, text])),
    "xl/styles.xml": styles,
    "xl/sharedStrings.xml":
      `${head}<sst xmlns="${main}" count="4" uniqueCount="4">` +
      strings
        .map(
          (text) => `<si><t>${text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;")}</t></si>`,
        )
        .join("") +
      "<si><r><rPr><b/></rPr><t>two </t></r><r><t>parts</t></r></si></sst>",
    ...parts,
  };
}

/** A workbook put together tag by tag, as a file. */
export function excelFile(crafted: Crafted): Uint8Array {
  return packed(excelTexts(crafted));
}
