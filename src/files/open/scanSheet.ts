import { columnNumber } from "../xml/address";
import { attribute, attributesPattern, element, type Tag } from "../xml/xml";

/** One cell's text in a sheet's part. */
export interface CellMark {
  readonly row: number;
  readonly column: number;
  readonly attributes: string;
  readonly inner: string;
  /** Number of its style; 0 where it names none. */
  readonly style: number;
  readonly start: number;
  readonly end: number;
}

/** One row's text in a sheet's part. */
export interface RowMark {
  readonly row: number;
  readonly attributes: string;
  readonly start: number;
  end: number;
  readonly cells: CellMark[];
}

/** The rows of a sheet's part, and where they stand in it. */
export interface SheetScan {
  readonly rows: readonly RowMark[];
  /** The element around them. */
  readonly data: Tag;
}

const cellsAndRows = new RegExp(
  `<(?:\\w+:)?(?:c${attributesPattern}(?:/>|>([\\s\\S]*?)</(?:\\w+:)?c>)|row${attributesPattern}(/?)>)|(</(?:\\w+:)?row>)|<!--[\\s\\S]*?-->`,
  "g",
);

/** Finds the rows and cells of a sheet's part; undefined when it has no place for cells. */
export function scanSheet(xml: string): SheetScan | undefined {
  const data = element(xml, "sheetData");
  if (data === undefined) return undefined;
  const offset = data.start + xml.slice(data.start, data.end).indexOf(">") + 1;
  const rows: RowMark[] = [];
  for (const found of data.inner.matchAll(cellsAndRows)) note(rows, found, offset);
  return { rows, data };
}

function note(rows: RowMark[], found: RegExpExecArray, offset: number): void {
  const [whole, ofCell, inner = "", ofRow, , closing] = found;
  const start = offset + found.index;
  const end = start + whole.length;
  const row = rows.at(-1);
  if (ofCell !== undefined) row?.cells.push(cellMark(row, { attributes: ofCell, inner, start, end }));
  else if (ofRow !== undefined) rows.push({ row: rowNumber(ofRow, row), attributes: ofRow, start, end, cells: [] });
  else if (closing !== undefined && row !== undefined) row.end = end;
}

/** A row or cell that does not say where it stands follows the one before it. */
function rowNumber(of: string, before: RowMark | undefined): number {
  const own = attribute(of, "r");
  return own === undefined ? (before?.row ?? -1) + 1 : Number(own) - 1;
}

function cellMark(row: RowMark, cell: Pick<CellMark, "attributes" | "inner" | "start" | "end">): CellMark {
  const letters = /\sr\s*=\s*["']([A-Za-z]+)/.exec(cell.attributes)?.[1];
  const column = letters === undefined ? (row.cells.at(-1)?.column ?? -1) + 1 : columnNumber(letters);
  const style = Number(/\ss\s*=\s*["'](\d+)/.exec(cell.attributes)?.[1] ?? 0);
  return { ...cell, row: row.row, column, style };
}
