import { BooleanNumber, CellValueType, type ICellData, type IWorksheetData } from "@univerjs/core";
import { freeSheetName } from "../../freeSheetName";
import type { NewCell, NewSheet } from "../../newSheet";
import { blockAt } from "../blockAt";
import type { Grid } from "../grid";
import { trouble } from "./trouble";

/** Rows and columns left free beyond what is written. */
const margin = 20;
const fewestRows = 200;
const fewestColumns = 26;

/** A new sheet in the grid's own form. */
type SheetData = Partial<IWorksheetData>;

/**
 * Adds a sheet with its cells in one step: `Sheet.add` of the practice sheet. Throws before it adds anything.
 *
 * @param furnished the sheet with what else is to be on it
 */
export function addSheet(
  grid: Grid,
  wanted: NewSheet,
  { index, furnished }: { readonly index?: number; readonly furnished?: (sheet: SheetData) => SheetData } = {},
): string {
  if (grid.book.isCellEditing()) throw trouble("editing", wanted.name);
  const taken = grid.book.getSheets().map((sheet) => sheet.getSheetName());
  const name = freeSheetName(wanted.name, taken);
  const plain = newSheetData(wanted);
  const data = furnished === undefined ? plain : furnished(plain);
  grid.book.setActiveSheet(grid.book.insertSheet(name, { index: index ?? taken.length, sheet: data }));
  return name;
}

function newSheetData({ blocks, widths }: NewSheet): SheetData {
  const cells = new Map<number, Map<number, ICellData>>();
  let [bottom, right] = [0, 0];
  for (const { address, rows } of blocks) {
    const { startRow, startColumn } = blockAt(address);
    bottom = Math.max(bottom, startRow + rows.length);
    right = Math.max(right, startColumn + (rows[0]?.length ?? 0));
    for (const [down, row] of rows.entries()) {
      for (const [across, cell] of row.entries()) {
        if (cell !== null) put(cells, [startRow + down, startColumn + across], cell);
      }
    }
  }
  return {
    rowCount: Math.max(fewestRows, bottom + margin),
    columnCount: Math.max(fewestColumns, right + margin),
    defaultRowHeight: 24,
    cellData: Object.fromEntries([...cells].map(([at, row]) => [at, Object.fromEntries(row)])),
    columnData: Object.fromEntries(widths.map((w, column) => [column, { w }])),
  };
}

function put(
  cells: Map<number, Map<number, ICellData>>,
  [row, column]: readonly [number, number],
  cell: NewCell,
): void {
  const there = cells.get(row) ?? new Map<number, ICellData>();
  cells.set(row, there.set(column, gridCell(cell)));
}

function gridCell({ kind, content, format, bold }: NewCell): ICellData {
  const style = {
    ...(bold ? { bl: BooleanNumber.TRUE } : {}),
    ...(format === "General" ? {} : { n: { pattern: format } }),
  };
  const look = Object.keys(style).length === 0 ? {} : { s: style };
  if (kind === "blank") return look;
  if (kind === "formula") return { f: String(content), ...look };
  return { v: content, t: kind === "text" ? CellValueType.STRING : CellValueType.NUMBER, ...look };
}
