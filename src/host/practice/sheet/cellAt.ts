import type { FWorksheet } from "@univerjs/preset-sheets-core";
import type { Cell } from "../../../nouns/cell";
import type { Grid } from "../grid";
import { cellValue } from "./cellValue";

/**
 * What reads single cells of a sheet, not as formatted; rows and columns count from 0. It is good until the sheet
 * changes. What a neighbour's spilled result shows in a cell, the grid keeps apart from what the cell itself holds.
 */
export function cellAt(grid: Grid, sheet: FWorksheet): (row: number, column: number) => Cell {
  const spilled = grid.formulas.getArrayFormulaCellData()[grid.book.getId()]?.[sheet.getSheetId()];
  const own = sheet.getSheet();
  return (row, column) => cellValue(spilled?.[row]?.[column] ?? own.getCellRaw(row, column));
}
