import type { Package } from "../zip/openPackage";
import { attribute, elements, unescaped } from "./xml";

/** A part that another one points at. */
export interface Relation {
  readonly id: string;
  /** The last word of its kind: "worksheet", "styles". */
  readonly kind: string;
  /** The part's name in the package. */
  readonly path: string;
}

/** A part's text; "" where the package has no such part. */
export function textOf(parts: Package, path: string): string {
  return new TextDecoder().decode(parts.get(path));
}

/** A text as a part. */
export function partOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** Where a part's relations are written: "xl/_rels/workbook.xml.rels" of "xl/workbook.xml". */
export function relationsPath(path: string): string {
  const cut = path.lastIndexOf("/") + 1;
  return `${path.slice(0, cut)}_rels/${path.slice(cut)}.rels`;
}

/** The parts within the package that a part points at; addresses outside are left out and never asked for. */
export function relationsOf(parts: Package, path: string): readonly Relation[] {
  return elements(textOf(parts, relationsPath(path)), "Relationship")
    .filter(({ attributes }) => attribute(attributes, "TargetMode") !== "External")
    .map(({ attributes }) => ({
      id: attribute(attributes, "Id") ?? "",
      kind: (attribute(attributes, "Type") ?? "").replace(/^.*\//, ""),
      path: resolved(unescaped(attribute(attributes, "Target") ?? ""), path),
    }));
}

/** A target as written in a part's relations, from the top of the package. */
function resolved(target: string, from: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  }
  return steps.join("/");
}
