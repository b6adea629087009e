import type { Reading } from "../sheet";
import { cellProperties, excelCells } from "./excelCells";
import { excelRange } from "./excelRange";
import { inExcel } from "./inExcel";

/** Reads a reference; whole columns and rows are cut where the sheet's used cells end. */
export function readExcel(reference: string, home: string): Promise<Reading> {
  return inExcel(reference, async (context) => {
    const whole = await excelRange(context, reference, home);
    const used = whole.worksheet.getUsedRangeOrNullObject(true);
    whole.load("isEntireColumn,isEntireRow,rowIndex,columnIndex,rowCount,columnCount,worksheet/name");
    used.load("rowIndex,columnIndex,rowCount,columnCount");
    await context.sync();
    const range = whole.isEntireColumn || whole.isEntireRow ? withinUse(whole, used) : whole;
    range.load(cellProperties);
    await context.sync();
    const corner = { sheet: whole.worksheet.name, row: whole.rowIndex + 1, column: whole.columnIndex + 1 };
    return { cells: excelCells(range), corner };
  });
}

/** From the range's own first cell to the last used row and column: rows of two ranges still match. */
function withinUse(whole: Excel.Range, used: Excel.Range): Excel.Range {
  const { rowIndex, columnIndex } = whole;
  const lastRow = used.isNullObject ? 0 : used.rowIndex + used.rowCount;
  const lastColumn = used.isNullObject ? 0 : used.columnIndex + used.columnCount;
  const rows = Math.min(whole.rowCount, Math.max(lastRow - rowIndex, 1));
  const columns = Math.min(whole.columnCount, Math.max(lastColumn - columnIndex, 1));
  return whole.worksheet.getRangeByIndexes(rowIndex, columnIndex, rows, columns);
}
