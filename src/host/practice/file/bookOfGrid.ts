import type { ICellData, IRange, IStyleData, IWorkbookData, IWorksheetData, Nullable } from "@univerjs/core";
import type { Area, Book, BookCell, BookSheet, Look } from "../../../files/book";
import type { Cell } from "../../../nouns/cell";
import { chartOf } from "../chart/cellChart";
import type { Grid } from "../grid";
import { cellValue } from "../sheet/cellValue";
import { lookOf } from "./gridLooks";
import { styleName } from "./gridWorkbook";

/** Gives the grid's styles their places in a book's list of looks. */
interface Looks {
  readonly list: Look[];
  placeOf(style: Nullable<string | IStyleData>): number | undefined;
}

/** A sheet that is read, and with what. */
interface Reading {
  readonly grid: Grid;
  readonly workbook: string;
  readonly sheet: string;
  readonly looks: Looks;
}

/**
 * The workbook as it stands in the grid.
 *
 * @param known the looks of the file that it was opened from, which keep their places
 */
export function bookOfGrid(grid: Grid, known: readonly Look[]): Book {
  const snapshot = grid.book.getWorkbook().getSnapshot();
  const looks = looksOf(snapshot, known);
  const sheets = snapshot.sheetOrder.flatMap((id) => {
    const sheet = snapshot.sheets[id];
    return sheet === undefined ? [] : [sheetOf(sheet, { grid, workbook: snapshot.id, sheet: id, looks })];
  });
  const names = grid.book.getDefinedNames().map((one) => ({
    name: one.getName(),
    reference: one.getFormulaOrRefString().replace(/^=/, ""),
  }));
  return { sheets, looks: looks.list, names };
}

function looksOf(snapshot: IWorkbookData, known: readonly Look[]): Looks {
  const list = known.length === 0 ? [{}] : [...known];
  const places = new Map(known.map((_, at) => [styleName(at), at]));
  const byContent = new Map<string, number>([["{}", 0]]);
  return {
    list,
    placeOf: (style) => {
      if (style === null || style === undefined) return undefined;
      const place = typeof style === "string" ? places.get(style) : undefined;
      if (place !== undefined) return place;
      const look = lookOf((typeof style === "string" ? snapshot.styles[style] : style) ?? {});
      const content = JSON.stringify(look);
      const found = byContent.get(content) ?? list.push(look) - 1;
      byContent.set(content, found);
      return found;
    },
  };
}

function sheetOf(sheet: Partial<IWorksheetData>, reading: Reading): BookSheet {
  const rows = new Map<number, Map<number, BookCell>>();
  for (const [row, columns] of Object.entries(sheet.cellData ?? {})) {
    const cells = Object.entries((columns ?? {}) as Record<string, Nullable<ICellData>>).flatMap(([column, cell]) => {
      const found = bookCell(cell, [Number(row), Number(column)], reading);
      return found === undefined ? [] : [[Number(column), found] as const];
    });
    if (cells.length > 0) rows.set(Number(row), new Map(cells));
  }
  const widths = Object.entries(sheet.columnData ?? {}).map(
    ([column, data]) => [Number(column), data?.hd === 1 ? 0 : data?.w] as const,
  );
  return {
    name: sheet.name ?? "",
    hidden: sheet.hidden === 1,
    rows,
    merges: (sheet.mergeData ?? []).map(blockOf),
    widths: new Map(widths.flatMap(([column, width]) => (width === undefined ? [] : [[column, Math.round(width)]]))),
  };
}

function blockOf({ startRow, startColumn, endRow, endColumn }: IRange): Area {
  return { top: startRow, left: startColumn, bottom: endRow, right: endColumn };
}

function bookCell(
  cell: Nullable<ICellData>,
  [row, column]: readonly [number, number],
  { grid, workbook, sheet, looks }: Reading,
): BookCell | undefined {
  if (cell === null || cell === undefined) return undefined;
  const place = looks.placeOf(cell.s);
  const look = place === undefined || place === 0 ? {} : { look: place };
  const value = cellValue(cell);
  const chart = chartOf(cell);
  const drawn = chart === undefined ? {} : { chart };
  const formula = cell.f || cell.si ? grid.formulas.getFormulaStringByCell(row, column, sheet, workbook) : undefined;
  if (formula === undefined || formula === null || formula === "") {
    return withoutEmpty({ value, ...look, ...drawn });
  }
  return { value, formula, ...spillAt(grid, [workbook, sheet, row, column], value), ...look, ...drawn };
}

function withoutEmpty(cell: BookCell): BookCell | undefined {
  return cell.value === null && cell.look === undefined && cell.chart === undefined ? undefined : cell;
}

/** The block that a formula fills: the grid keeps it apart from the cells' own contents. */
function spillAt(
  { formulas }: Grid,
  [workbook, sheet, row, column]: readonly [string, string, number, number],
  own: Cell,
): Pick<BookCell, "spill"> {
  const range = formulas.getArrayFormulaRange()[workbook]?.[sheet]?.[row]?.[column];
  if (range === undefined || range === null) return {};
  const { startRow, endRow, startColumn, endColumn } = range;
  if (startRow === endRow && startColumn === endColumn) return {};
  const values = formulas.getArrayFormulaCellData()[workbook]?.[sheet];
  const spill = Array.from({ length: endRow - startRow + 1 }, (_, down) =>
    Array.from({ length: endColumn - startColumn + 1 }, (__, across) =>
      down === 0 && across === 0 ? own : cellValue(values?.[startRow + down]?.[startColumn + across]),
    ),
  );
  return { spill };
}
