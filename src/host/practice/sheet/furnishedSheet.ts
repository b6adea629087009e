import { BooleanNumber, type ICellData, type IRange, type IWorksheetData } from "@univerjs/core";
import type { NewChart, OwnSheet } from "../../ownSheet";
import { blockAt } from "../blockAt";
import { withChart } from "../chart/cellChart";

type SheetData = Partial<IWorksheetData>;

/** A sheet in the grid's own form with its tables' headings marked, and its charts, each in a merged cell. */
export function furnishedSheet(sheet: SheetData, { tables, charts }: OwnSheet): SheetData {
  const headed = tables.reduce((before, address) => withHeadings(before, blockAt(address)), sheet);
  return charts.reduce(withChartCell, headed);
}

function withHeadings(sheet: SheetData, { startRow, startColumn, endColumn }: IRange): SheetData {
  const columns = Array.from({ length: endColumn - startColumn + 1 }, (_, at) => startColumn + at);
  return columns.reduce((before, column) => withCell(before, [startRow, column], marked), sheet);
}

function marked(cell: ICellData): ICellData {
  const style = typeof cell.s === "object" ? cell.s : {};
  return { ...cell, s: { ...style, bl: BooleanNumber.TRUE, bg: { rgb: "#e3ebd8" } } };
}

function withChartCell(sheet: SheetData, { title, bars, format, place }: NewChart): SheetData {
  const block = blockAt(place);
  const chart = withChart({ title, bars, pattern: format });
  const merged = { ...sheet, mergeData: [...(sheet.mergeData ?? []), block] };
  return withCell(merged, [block.startRow, block.startColumn], (cell) => ({ ...cell, ...chart }));
}

function withCell(
  sheet: SheetData,
  [row, column]: readonly [number, number],
  change: (cell: ICellData) => ICellData,
): SheetData {
  const cells = sheet.cellData ?? {};
  const columns = cells[row] ?? {};
  return { ...sheet, cellData: { ...cells, [row]: { ...columns, [column]: change(columns[column] ?? {}) } } };
}
