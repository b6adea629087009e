import { relationsOf, textOf } from "../xml/parts";
import { attribute, element, elements } from "../xml/xml";
import { addPart, type Draft, inside, metadataPart, write } from "./draft";

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const dynamic = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";

const kind =
  '<metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" ' +
  'splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>';
const properties =
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
  `<xda:dynamicArrayProperties xmlns:xda="${dynamic}" fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>`;

/**
 * The number by which a cell says that its formula fills as many cells as its result has ([MS-XLSX] 2.4.111 and
 * ECMA-376 part 1, 18.9), put into the workbook's metadata where it is not there yet.
 *
 * @param workbook name of the workbook's own part
 * @returns undefined where the file has metadata of another kind only, which are left as they are
 */
export function dynamicMark(draft: Draft, workbook: string): number | undefined {
  const path = relationsOf(draft, workbook).find((relation) => relation.kind === "sheetMetadata")?.path;
  if (path !== undefined) return markIn(draft, path);
  const text =
    `${head}<metadata xmlns="${main}"><metadataTypes count="1">${kind}</metadataTypes>${properties}` +
    '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
  addPart(draft, workbook, metadataPart("xl/metadata.xml", text));
  return 1;
}

/** The cells' list in metadata that know dynamic formulas already; one more entry where none is theirs. */
function markIn(draft: Draft, path: string): number | undefined {
  const xml = textOf(draft, path);
  const kinds = elements(element(xml, "metadataTypes")?.inner ?? "", "metadataType");
  const type = kinds.findIndex(({ attributes }) => attribute(attributes, "name") === "XLDAPR") + 1;
  if (type === 0) return undefined;
  const cells = element(xml, "cellMetadata");
  const found = elements(cells?.inner ?? "", "bk").findIndex(
    ({ inner }) => attribute(element(inner, "rc")?.attributes ?? "", "t") === String(type),
  );
  if (found >= 0) return found + 1;
  const entry = `<bk><rc t="${type}" v="0"/></bk>`;
  if (cells === undefined) {
    write(draft, path, inside(xml, "metadata", `<cellMetadata count="1">${entry}</cellMetadata>`));
    return 1;
  }
  const count = elements(cells.inner, "bk").length + 1;
  const list = `<cellMetadata count="${count}">${cells.inner}${entry}</cellMetadata>`;
  write(draft, path, xml.slice(0, cells.start) + list + xml.slice(cells.end));
  return count;
}
