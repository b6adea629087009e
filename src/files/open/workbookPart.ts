import type { BookName } from "../book";
import { relationsOf, textOf } from "../xml/parts";
import { attribute, element, elements, unescaped } from "../xml/xml";
import type { Package } from "../zip/openPackage";

/** What a workbook's own part says, and where its other parts are. */
export interface WorkbookPart {
  readonly path: string;
  readonly sheets: readonly SheetEntry[];
  readonly styles: string | undefined;
  readonly strings: string | undefined;
  readonly theme: string | undefined;
  /** Whether dates count from 1904, as on old Macs. */
  readonly from1904: boolean;
  readonly names: readonly BookName[];
}

/** One sheet of cells. */
export interface SheetEntry {
  readonly name: string;
  readonly path: string;
  readonly hidden: boolean;
}

/** Reads the workbook's own part; undefined when there is none, or it has no sheet of cells. */
export function workbookPart(parts: Package): WorkbookPart | undefined {
  const path = relationsOf(parts, "").find(({ kind }) => kind === "officeDocument")?.path;
  if (path === undefined || !parts.has(path)) return undefined;
  const xml = textOf(parts, path);
  const relations = relationsOf(parts, path);
  const pathOf = (wanted: string) => relations.find(({ kind }) => kind === wanted)?.path;
  const paths = new Map(relations.filter(({ kind }) => kind === "worksheet").map((one) => [one.id, one.path]));
  const sheets = elements(element(xml, "sheets")?.inner ?? "", "sheet").flatMap(({ attributes }) => {
    const target = paths.get(attribute(attributes, "\\w+:id") ?? "");
    if (target === undefined || !parts.has(target)) return [];
    const state = attribute(attributes, "state") ?? "visible";
    return [{ name: attribute(attributes, "name") ?? "", path: target, hidden: state !== "visible" }];
  });
  if (sheets.length === 0) return undefined;
  return {
    path,
    sheets,
    styles: pathOf("styles"),
    strings: pathOf("sharedStrings"),
    theme: pathOf("theme"),
    from1904: isTrue(attribute(element(xml, "workbookPr")?.attributes ?? "", "date1904")),
    names: namesIn(xml),
  };
}

/** Names for blocks of cells that hold in the whole workbook; Excel's own names and formulas stay in the file. */
function namesIn(xml: string): BookName[] {
  return elements(element(xml, "definedNames")?.inner ?? "", "definedName")
    .filter(({ attributes }) => attribute(attributes, "localSheetId") === undefined)
    .map(({ attributes, inner }) => ({ name: attribute(attributes, "name") ?? "", reference: unescaped(inner) }))
    .filter(
      ({ name, reference }) => !name.startsWith("_xl") && /^(?:'(?:[^'[]|'')+'|[\w.]+)!\$?[A-Z]+/.test(reference),
    );
}

/** Excel writes "1", LibreOffice "true". */
export function isTrue(value: string | undefined): boolean {
  return value === "1" || value === "true";
}
