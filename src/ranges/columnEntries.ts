import type { CellRange } from "../nouns/cellRange";
import type { Entry } from "../nouns/sample";
import { cellsOf } from "./cellsOf";
import { excelDates } from "./excelDates";
import { cellText } from "./option";
import { placeOf } from "./placeOf";
import type { Column } from "./readColumn";
import type { SettledCell } from "./settleUnits";

/** One entry for each cell of a column, with its place and its text; numbers that look like dates are left out. */
export function columnEntries(range: CellRange, column: Column): readonly Entry[] {
  const given = cellsOf(range);
  const isDate = excelDates(column.numbers.map(({ value }) => value));
  return column.cells.map((cell, at): Entry => {
    const index = column.from + at;
    const where = { place: placeOf(range, index), text: cellText(given[index] ?? null).trim() };
    return { ...entryKind(cell, isDate), ...where };
  });
}

type EntryKind =
  | Pick<Extract<Entry, { kind: "value" }>, "kind" | "value" | "read">
  | Pick<Extract<Entry, { kind: "lost" }>, "kind">
  | Pick<Extract<Entry, { kind: "not-recorded" }>, "kind" | "why">;

function entryKind(cell: SettledCell, isDate: (number: number) => boolean): EntryKind {
  if (cell.means === "lost") return { kind: "lost" };
  if (cell.means === "unusable") return { kind: "not-recorded", why: cell.why };
  if (cell.converted) return { kind: "value", value: cell.value, read: "unit-converted" };
  return isDate(cell.value)
    ? { kind: "not-recorded", why: "date" }
    : { kind: "value", value: cell.value, read: cell.read };
}
