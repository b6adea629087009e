import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { ERROR_TYPE_SET } from "@univerjs/engine-formula";
import type { FWorksheet } from "@univerjs/preset-sheets-core";
import type { Cell } from "../../../nouns/cell";
import type { Grid } from "../grid";

const errors: ReadonlySet<string> = ERROR_TYPE_SET;

/** One cell of the grid; rows and columns count from 0. */
export interface Spot {
  readonly sheet: FWorksheet;
  readonly row: number;
  readonly column: number;
}

/** The value of one cell, not as formatted. */
export function cellAt(grid: Grid, spot: Spot): Cell {
  return cellValue(spilledCell(grid, spot) ?? spot.sheet.getSheet().getCellRaw(spot.row, spot.column));
}

/** What a neighbour's spilled result shows in this cell: it is kept apart from what the cell itself holds. */
function spilledCell(grid: Grid, { sheet, row, column }: Spot): Nullable<ICellData> {
  return grid.formulas.getArrayFormulaCellData()[grid.book.getId()]?.[sheet.getSheetId()]?.[row]?.[column];
}

/** What a cell of the grid's own form holds. */
export function cellValue(cell: Nullable<ICellData>): Cell {
  const value = cell?.v ?? richText(cell);
  if (value === null || value === "") return null;
  if (cell?.t === CellValueType.BOOLEAN) return Boolean(value);
  return typeof value === "string" && errors.has(value) ? { error: value } : value;
}

/** A text typed on several lines ends with marks of the document model that no cell shows. */
function richText(cell: Nullable<ICellData>): string | null {
  const stream = cell?.p?.body?.dataStream;
  return stream === undefined ? null : stream.replace(/\r\n\0?$/, "").replaceAll("\r", "\n");
}
