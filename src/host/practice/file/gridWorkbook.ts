import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from "@univerjs/core";
import type { Book, BookCell, BookSheet } from "../../../files/book";
import { isErrorCell } from "../../../nouns/cell";
import { withChart } from "../chart/cellChart";
import { gridStyle } from "./gridLooks";

const leastRows = 200;
const leastColumns = 26;
/** Empty rows and columns behind the last used ones, to write into. */
const spareRows = 50;
const spareColumns = 6;

/** The grid's name for a look of the book. */
export function styleName(look: number): string {
  return `look-${look}`;
}

/**
 * A workbook in the grid's own form.
 *
 * @param id which no other workbook of this page has had
 * @param name the file's, by which the notes on its trial are kept
 */
export function gridWorkbook(book: Book, id: string, name: string): IWorkbookData {
  const named = book.sheets.map((sheet, at) => ({ sheet, id: `sheet-${at}` }));
  return {
    id,
    name,
    appVersion: "0.25.1",
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(book.looks.map((look, at) => [styleName(at), gridStyle(look)])),
    sheetOrder: named.map((one) => one.id),
    sheets: Object.fromEntries(named.map((one) => [one.id, gridSheet(one.sheet, one.id)])),
  };
}

function gridSheet({ name, hidden, rows, merges, widths }: BookSheet, id: string): Partial<IWorksheetData> {
  const cellData: IObjectMatrixPrimitiveType<ICellData> = {};
  let [bottom, right] = [0, 0];
  for (const [row, columns] of rows) {
    cellData[row] = Object.fromEntries([...columns].map(([column, cell]) => [column, gridCell(cell)]));
    bottom = Math.max(bottom, row);
    for (const column of columns.keys()) right = Math.max(right, column);
  }
  return {
    id,
    name,
    hidden: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    rowCount: Math.max(leastRows, bottom + 1 + spareRows),
    columnCount: Math.max(leastColumns, right + 1 + spareColumns),
    defaultRowHeight: 24,
    defaultColumnWidth: 84,
    cellData,
    columnData: Object.fromEntries(
      [...widths].map(([column, w]) => [column, w === 0 ? { hd: BooleanNumber.TRUE } : { w }]),
    ),
    mergeData: merges.map(({ top, left, bottom: end, right: last }) => ({
      startRow: top,
      startColumn: left,
      endRow: end,
      endColumn: last,
    })),
  };
}

/** A text that looks like a formula or a number is told to be a text. */
function gridCell({ value, formula, look, chart }: BookCell): ICellData {
  const drawn = chart === undefined ? {} : withChart(chart);
  const style = look === undefined ? drawn : { s: styleName(look), ...drawn };
  if (formula !== undefined) return { f: formula, ...style };
  if (value === null) return style;
  if (isErrorCell(value)) return { v: value.error, t: CellValueType.STRING, ...style };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER, ...style };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN, ...style };
  return { v: value, t: CellValueType.STRING, ...style };
}
