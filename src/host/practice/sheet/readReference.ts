import type { Cell } from "../../../nouns/cell";
import type { Reading } from "../../sheet";
import type { Grid } from "../grid";
import { cellAt } from "./cellAt";
import { rangeOfReference, type SheetArea } from "./rangeOfReference";

/** Reads the cells of a reference: `Sheet.read` of the practice sheet. */
export function readReference(grid: Grid, reference: string, home: string): Reading {
  const block = rangeOfReference(grid, reference, home);
  const cells = trimmed(cellsOf(grid, block), block);
  return {
    cells,
    corner: { sheet: block.sheet.getSheetName(), row: block.top + 1, column: block.left + 1 },
  };
}

function cellsOf(grid: Grid, { sheet, top, left, bottom, right }: SheetArea): Cell[][] {
  const at = cellAt(grid, sheet);
  return Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across) => at(top + down, left + across)),
  );
}

/** A whole column or row keeps its cells up to the last one in use, and at least its first cell. */
function trimmed(cells: Cell[][], { sheet, top, left, bottom, right }: SheetArea): Cell[][] {
  if (top === 0 && bottom === sheet.getMaxRows() - 1) return cells.slice(0, usedRows(cells));
  if (left === 0 && right === sheet.getMaxColumns() - 1) {
    const width = cells.reduce((widest, row) => Math.max(widest, lastUsed(row) + 1), 1);
    return cells.map((row) => row.slice(0, width));
  }
  return cells;
}

function usedRows(cells: readonly Cell[][]): number {
  return Math.max(1, cells.findLastIndex((row) => lastUsed(row) >= 0) + 1);
}

function lastUsed(row: readonly Cell[]): number {
  return row.findLastIndex((cell) => cell !== null);
}
