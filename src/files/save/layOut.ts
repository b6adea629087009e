import type { Area, BookSheet } from "../book";
import { digits } from "../open/columnWidths";
import { areaOf, referenceOf } from "../xml/address";
import { attribute, element, elements, prefixOf, withAttribute } from "../xml/xml";
import { replaced } from "./draft";

/** Elements of a sheet's part that may stand between its cells and its merges (ECMA-376 part 1, 18.3.1.99). */
const beforeMerges =
  "sheetData|sheetCalcPr|sheetProtection|protectedRanges|scenarios|autoFilter|sortState|dataConsolidate|customSheetViews";

/** A sheet's part with the present merges, column widths and extent; what has not changed stays as it is. */
export function layOut(xml: string, before: BookSheet, now: BookSheet): string {
  return withExtent(withWidths(withMerges(xml, before, now), before, now), now);
}

function withMerges(xml: string, before: BookSheet, now: BookSheet): string {
  const list = (blocks: readonly Area[]) => blocks.map(referenceOf).sort();
  const merges = list(now.merges);
  if (merges.join() === list(before.merges).join()) return xml;
  const p = prefixOf(xml, "worksheet");
  const cells = merges.map((reference) => `<${p}mergeCell ref="${reference}"/>`).join("");
  const text = merges.length === 0 ? "" : `<${p}mergeCells count="${merges.length}">${cells}</${p}mergeCells>`;
  if (element(xml, "mergeCells") !== undefined) return replaced(xml, "mergeCells", () => text);
  const at = Math.max(...elements(xml, beforeMerges).map(({ end }) => end));
  return xml.slice(0, at) + text + xml.slice(at);
}

/** Columns as a file lists them: from one to another, and how they are. */
interface Columns {
  readonly from: number;
  readonly to: number;
  readonly attributes: string;
}

function withWidths(xml: string, before: BookSheet, now: BookSheet): string {
  const changed = new Map([...now.widths].filter(([column, width]) => before.widths.get(column) !== width));
  if (changed.size === 0) return xml;
  const p = prefixOf(xml, "worksheet");
  const cols = elements(element(xml, "cols")?.inner ?? "", "col").flatMap(({ attributes }): Columns[] => {
    const [from, to] = [Number(attribute(attributes, "min")) - 1, Number(attribute(attributes, "max")) - 1];
    return split({ from, to, attributes }, changed);
  });
  for (const [column, width] of changed) {
    const old = cols.find(({ from, to }) => from <= column && column <= to);
    const attributes = widened(old?.attributes ?? "", width);
    if (old === undefined) cols.push({ from: column, to: column, attributes });
    else cols[cols.indexOf(old)] = { ...old, attributes };
  }
  const list = cols.sort((one, other) => one.from - other.from).map((one) => `<${p}col${placed(one)}/>`);
  const text = `<${p}cols>${list.join("")}</${p}cols>`;
  if (element(xml, "cols") !== undefined) return replaced(xml, "cols", () => text);
  return replaced(xml, "sheetData", (data) => text + data);
}

/** The list's entry, cut so that each changed column has one of its own. */
function split({ from, to, attributes }: Columns, changed: ReadonlyMap<number, number>): Columns[] {
  const within = [...changed.keys()].filter((column) => from <= column && column <= to);
  const starts = [...new Set([from, ...within, ...within.map((column) => column + 1)])]
    .filter((start) => start <= to)
    .sort((one, other) => one - other);
  return starts.map((start, at) => ({ from: start, to: (starts[at + 1] ?? to + 1) - 1, attributes }));
}

function widened(attributes: string, width: number): string {
  const shown = withAttribute(attributes, "hidden", width === 0 ? "1" : undefined);
  return withAttribute(withAttribute(shown, "width", String(digits(width))), "customWidth", "1");
}

function placed({ from, to, attributes }: Columns): string {
  return withAttribute(withAttribute(attributes, "min", String(from + 1)), "max", String(to + 1));
}

/** The block that the sheet says it uses grows with what was written outside it. */
function withExtent(xml: string, { rows }: BookSheet): string {
  const said = attribute(element(xml, "dimension")?.attributes ?? "", "ref") ?? "";
  const block = areaOf(said);
  if (block === undefined || rows.size === 0) return xml;
  const reference = referenceOf(grown(block, rows));
  if (reference === said) return xml;
  return replaced(xml, "dimension", (tag) => tag.replace(/ref\s*=\s*["'][^"']*["']/, `ref="${reference}"`));
}

function grown(block: Area, rows: BookSheet["rows"]): Area {
  let { top, left, bottom, right } = block;
  for (const [row, columns] of rows) {
    [top, bottom] = [Math.min(top, row), Math.max(bottom, row)];
    for (const column of columns.keys()) [left, right] = [Math.min(left, column), Math.max(right, column)];
  }
  return { top, left, bottom, right };
}
