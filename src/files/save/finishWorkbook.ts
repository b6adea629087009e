import type { BookName } from "../book";
import { relationsOf, textOf } from "../xml/parts";
import { element, escaped, prefixOf, withAttribute } from "../xml/xml";
import { type Draft, inside, removePart, replaced, write } from "./draft";

/** What has come about while the sheets were written. */
export interface Outcome {
  /** Whether cells gained or lost formulas, so that the file's order of calculation is no longer true. */
  readonly formulasChanged: boolean;
  /** Whether results that only Excel can work out may be out of date. */
  readonly stale: boolean;
  /** New names for blocks of cells. */
  readonly names: readonly BookName[];
}

/** Brings the workbook's own part up to date with its sheets; Excel makes the order of calculation anew by itself. */
export function finishWorkbook(draft: Draft, path: string, { formulasChanged, stale, names }: Outcome): void {
  const chain = relationsOf(draft, path).find(({ kind }) => kind === "calcChain")?.path;
  if (formulasChanged && chain !== undefined) removePart(draft, path, chain);
  const before = textOf(draft, path);
  const named = names.length === 0 ? before : withNames(before, names);
  const after = stale ? recalculated(named) : named;
  if (after !== before) write(draft, path, after);
}

function withNames(xml: string, names: readonly BookName[]): string {
  const p = prefixOf(xml, "workbook");
  const entries = names
    .map(({ name, reference }) => `<${p}definedName name="${escaped(name)}">${escaped(reference)}</${p}definedName>`)
    .join("");
  if (element(xml, "definedNames") !== undefined) {
    return replaced(xml, "definedNames", (list) => inside(list, "definedNames", entries));
  }
  const list = `<${p}definedNames>${entries}</${p}definedNames>`;
  const before = ["externalReferences", "functionGroups", "sheets"].find((name) => element(xml, name) !== undefined);
  return replaced(xml, before ?? "sheets", (whole) => whole + list);
}

/** Asks Excel to work everything out when it opens the file. */
function recalculated(xml: string): string {
  const p = prefixOf(xml, "workbook");
  const attributes = withAttribute(element(xml, "calcPr")?.attributes ?? "", "fullCalcOnLoad", "1");
  const text = `<${p}calcPr${attributes}/>`;
  if (element(xml, "calcPr") !== undefined) return replaced(xml, "calcPr", () => text);
  const before = ["definedNames", "externalReferences", "functionGroups", "sheets"];
  return replaced(xml, before.find((name) => element(xml, name) !== undefined) ?? "sheets", (whole) => whole + text);
}
