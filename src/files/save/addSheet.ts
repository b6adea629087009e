import type { BookSheet } from "../book";
import type { SheetReading } from "../open/readSheet";
import { scanSheet } from "../open/scanSheet";
import { textOf } from "../xml/parts";
import { attribute, element, elements, escaped, prefixOf } from "../xml/xml";
import { blankSheet } from "./blankPackage";
import { addPart, type Draft, freePath, inside, replaced, usualPart, write } from "./draft";

/**
 * Adds an empty sheet at the end of a workbook, and answers as if it had been read from the file.
 *
 * @param workbook name of the workbook's own part
 */
export function addSheet(draft: Draft, workbook: string, { name, hidden }: BookSheet): SheetReading {
  const path = freePath(draft, "xl/worksheets/sheet");
  const id = addPart(draft, workbook, usualPart("worksheet", path, blankSheet));
  const xml = textOf(draft, workbook);
  const numbers = elements(element(xml, "sheets")?.inner ?? "", "sheet").map(({ attributes }) =>
    Number(attribute(attributes, "sheetId")),
  );
  const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const entry =
    `<${prefixOf(xml, "workbook")}sheet name="${escaped(name)}" sheetId="${Math.max(0, ...numbers) + 1}"` +
    `${hidden ? ' state="hidden"' : ""} xmlns:r="${office}" r:id="${id}"/>`;
  write(
    draft,
    workbook,
    replaced(xml, "sheets", (sheets) => inside(sheets, "sheets", entry)),
  );
  return asRead(name, path);
}

function asRead(name: string, path: string): SheetReading {
  const scan = scanSheet(blankSheet);
  if (scan === undefined) throw new Error("the blank sheet has no place for cells");
  const sheet = { name, hidden: false, rows: new Map(), merges: [], widths: new Map() };
  const entry = { name, path, hidden: false };
  return { entry, xml: blankSheet, scan, marks: new Map(), formulas: new Map(), sheet, leftAlone: [] };
}
