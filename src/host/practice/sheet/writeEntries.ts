import { CellValueType, type ICellData } from "@univerjs/core";
import type { FRange } from "@univerjs/preset-sheets-core";
import type { Entry } from "../../sheet";
import type { Grid } from "../grid";
import { cellAt } from "./cellAt";
import { rangeOfReference } from "./rangeOfReference";
import { sheetNamed } from "./sheetNamed";
import { trouble } from "./trouble";

/** Writes entries: `Sheet.write` of the practice sheet. Throws before writing anything when it may not. */
export function writeEntries(grid: Grid, entries: readonly Entry[], over: boolean): void {
  if (grid.book.isCellEditing()) throw trouble("editing", entries[0]?.address ?? "");
  const targets = entries.map((entry) => ({ entry, range: cellOf(grid, entry) }));
  const taken = over ? undefined : targets.find(({ range }) => holdsSomething(grid, range));
  if (taken !== undefined) throw trouble("not-empty", taken.entry.address);
  for (const { entry, range } of targets) {
    range.setValueForCell(content(entry.content));
    range.setNumberFormat(entry.format);
  }
}

function cellOf(grid: Grid, entry: Entry): FRange {
  const { sheet, top, left } = rangeOfReference(grid, entry.address, entry.sheet);
  return sheet.getRange(top, left);
}

function holdsSomething(grid: Grid, range: FRange): boolean {
  const sheet = sheetNamed(grid, range.getSheetName());
  return range.getFormula() !== "" || cellAt(grid, { sheet, row: range.getRow(), column: range.getColumn() }) !== null;
}

function content(value: string | number): ICellData {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER, f: null, si: null, p: null };
  if (value.startsWith("=")) return { f: value, v: null, t: null, si: null, p: null };
  return { v: value, t: CellValueType.STRING, f: null, si: null, p: null };
}
