import { CellValueType, type ICellData } from "@univerjs/core";
import type { Entry } from "../../sheet";
import type { Grid } from "../grid";
import { cellAt } from "./cellAt";
import { rangeOfReference, type SheetArea } from "./rangeOfReference";
import { trouble } from "./trouble";

/** Writes entries: `Sheet.write` of the practice sheet. Throws before writing anything when it may not. */
export function writeEntries(grid: Grid, entries: readonly Entry[], over: boolean): void {
  if (grid.book.isCellEditing()) throw trouble("editing", entries[0]?.address ?? "");
  const targets = entries.map((entry) => ({ entry, block: rangeOfReference(grid, entry.address, entry.sheet) }));
  const taken = over ? undefined : targets.find(({ block }) => holdsSomething(grid, block));
  if (taken !== undefined) throw trouble("not-empty", taken.entry.address);
  for (const { entry, block } of targets) {
    const range = block.sheet.getRange(block.top, block.left);
    range.setValueForCell(content(entry.content));
    range.setNumberFormat(entry.format);
  }
}

function holdsSomething(grid: Grid, { sheet, top, left }: SheetArea): boolean {
  return sheet.getRange(top, left).getFormula() !== "" || cellAt(grid, sheet)(top, left) !== null;
}

function content(value: string | number): ICellData {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER, f: null, si: null, p: null };
  if (value.startsWith("=")) return { f: value, v: null, t: null, si: null, p: null };
  return { v: value, t: CellValueType.STRING, f: null, si: null, p: null };
}
