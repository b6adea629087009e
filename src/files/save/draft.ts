import { partOf, relationsOf, relationsPath, textOf } from "../xml/parts";
import { attribute, element, elements, escaped } from "../xml/xml";
import type { Package } from "../zip/openPackage";

/** A package while it is being changed. */
export type Draft = Map<string, Uint8Array>;

/** A part that the workbook's own part will point at. */
export interface NewPart {
  /** Its name in the package: "xl/metadata.xml". */
  readonly path: string;
  readonly text: string;
  /** Its media type. */
  readonly type: string;
  /** The address that names its kind of relation. */
  readonly relation: string;
}

const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const kinds = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** What a new part of the usual kinds is called and how it is pointed at. */
export function usualPart(kind: "worksheet" | "styles", path: string, text: string): NewPart {
  return { path, text, type: `${kinds}.${kind}+xml`, relation: `${office}/${kind}` };
}

/** The new part of dynamic formulas. */
export function metadataPart(path: string, text: string): NewPart {
  return { path, text, type: `${kinds}.sheetMetadata+xml`, relation: `${office}/sheetMetadata` };
}

const noRelations =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"/>';

/** Writes a part. */
export function write(draft: Draft, path: string, text: string): void {
  draft.set(path, partOf(text));
}

/**
 * Adds a part that another one points at.
 *
 * @returns the id under which it does
 */
export function addPart(draft: Draft, from: string, part: NewPart): string {
  write(draft, part.path, part.text);
  const typed = `<Override PartName="/${escaped(part.path)}" ContentType="${part.type}"/>`;
  write(draft, "[Content_Types].xml", inside(textOf(draft, "[Content_Types].xml"), "Types", typed));
  const path = relationsPath(from);
  const id = freeId(draft, from);
  const target = `<Relationship Id="${id}" Type="${part.relation}" Target="/${escaped(part.path)}"/>`;
  const relations = draft.has(path) ? textOf(draft, path) : noRelations;
  write(draft, path, inside(relations, "Relationships", target));
  return id;
}

/** A name that no part has yet: "xl/charts/chart2.xml" after "xl/charts/chart", where the first is there. */
export function freePath(draft: Package, stem: string): string {
  let number = 1;
  while (draft.has(`${stem}${number}.xml`)) number++;
  return `${stem}${number}.xml`;
}

/** Takes a part out, and what points at it. */
export function removePart(draft: Draft, from: string, path: string): void {
  const relation = relationsOf(draft, from).find((one) => one.path === path);
  draft.delete(path);
  remove(draft, "[Content_Types].xml", (of) => attribute(of, "PartName") === `/${path}`);
  remove(draft, relationsPath(from), (of) => attribute(of, "Id") === relation?.id);
}

/** The text with something put at the end of its root. */
export function inside(xml: string, root: string, added: string): string {
  const empty = new RegExp(`<((?:\\w+:)?${root})(\\s[^>]*?)?/>\\s*$`);
  const closed = xml.replace(empty, (_, name, of = "") => `<${name}${of}></${name}>`);
  const at = closed.search(new RegExp(`</(?:\\w+:)?${root}\\s*>\\s*$`));
  return closed.slice(0, at) + added + closed.slice(at);
}

function remove(draft: Draft, path: string, isMeant: (attributes: string) => boolean): void {
  const xml = textOf(draft, path);
  const tag = elements(xml, "Override|Relationship").find(({ attributes }) => isMeant(attributes));
  if (tag !== undefined) write(draft, path, xml.slice(0, tag.start) + xml.slice(tag.end));
}

function freeId(draft: Package, from: string): string {
  const taken = new Set(
    elements(textOf(draft, relationsPath(from)), "Relationship").map(({ attributes }) => attribute(attributes, "Id")),
  );
  let number = taken.size + 1;
  while (taken.has(`rId${number}`)) number++;
  return `rId${number}`;
}

/** The text with the first element of a name replaced; as it is where there is none. */
export function replaced(xml: string, name: string, change: (whole: string) => string): string {
  const tag = element(xml, name);
  return tag === undefined ? xml : xml.slice(0, tag.start) + change(xml.slice(tag.start, tag.end)) + xml.slice(tag.end);
}
