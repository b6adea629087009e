import type { ICellData, IObjectMatrixPrimitiveType, IWorksheetData } from "@univerjs/core";
import { blockAt } from "../blockAt";

/** One sheet of the practice workbook as its own file writes it. */
export interface SheetPlan {
  readonly id: string;
  readonly name: string;
  /** Cells by address: "B2". */
  readonly cells: Readonly<Record<string, ICellData>>;
  /** Column widths in pixels, from column A. */
  readonly widths: readonly number[];
  /** Merged blocks: "A11:E13". */
  readonly merged: readonly string[];
}

/** Room below the last cell, and never fewer rows than this. */
const room = 30;
const fewestRows = 200;
const columnCount = 26;

/** A sheet's plan in the grid's own form. */
export function sheetData(plan: SheetPlan): Partial<IWorksheetData> {
  const cellData = cellMatrix(plan.cells);
  const lastRow = Math.max(...Object.keys(cellData).map(Number));
  return {
    id: plan.id,
    name: plan.name,
    rowCount: Math.max(fewestRows, lastRow + room),
    columnCount,
    defaultRowHeight: 24,
    cellData,
    columnData: Object.fromEntries(plan.widths.map((w, column) => [column, { w }])),
    mergeData: plan.merged.map(blockAt),
  };
}

function cellMatrix(cells: SheetPlan["cells"]): IObjectMatrixPrimitiveType<ICellData> {
  const matrix: IObjectMatrixPrimitiveType<ICellData> = {};
  for (const [address, cell] of Object.entries(cells)) {
    const { startRow, startColumn } = blockAt(address);
    matrix[startRow] = { ...matrix[startRow], [startColumn]: cell };
  }
  return matrix;
}
