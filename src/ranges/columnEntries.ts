import type { CellRange } from "../nouns/cellRange";
import type { Place } from "../nouns/place";
import type { Entry } from "../nouns/sample";
import { excelDates } from "./excelDates";
import { placeOf } from "./placeOf";
import type { Column } from "./readColumn";
import type { SettledCell } from "./settleUnits";

/** One entry for each cell of a column, with its place; plain numbers that look like dates are left out. */
export function columnEntries(range: CellRange, column: Column): readonly Entry[] {
  const isDate = excelDates(column.cells.map((cell) => (cell.means === "amount" ? cell.value : Number.NaN)));
  return column.cells.map((cell, at) => entryOf(cell, placeOf(range, column.from + at), isDate));
}

function entryOf(cell: SettledCell, place: Place, isDate: (number: number) => boolean): Entry {
  if (cell.means === "lost") return { kind: "lost", place };
  if (cell.means === "unusable") return { kind: "not-recorded", why: cell.why, place };
  if (cell.read === "number" && isDate(cell.value)) return { kind: "not-recorded", why: "date", place };
  return { kind: "value", value: cell.value, read: cell.read, place };
}
