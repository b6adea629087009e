import type { BookCell, BookSheet } from "../../src/files/book";
import { addressOf, placeOf } from "../../src/files/xml/address";

/** A sheet's cells by address. */
export function sheetCells(sheet: BookSheet | undefined): Record<string, BookCell> {
  const found = [...(sheet?.rows ?? [])].flatMap(([row, ofRow]) =>
    [...ofRow].map(([column, cell]) => [addressOf({ row, column }), cell] as const),
  );
  return Object.fromEntries(found);
}

/** The sheet with some cells changed; undefined empties a cell. */
export function edited(sheet: BookSheet, cells: Readonly<Record<string, BookCell | undefined>>): BookSheet {
  const rows = new Map([...sheet.rows].map(([row, ofRow]) => [row, new Map(ofRow)] as const));
  for (const [address, cell] of Object.entries(cells)) {
    const { row, column } = placeOf(address) ?? { row: -1, column: -1 };
    const ofRow = rows.get(row) ?? new Map<number, BookCell>();
    rows.set(row, ofRow);
    if (cell === undefined) ofRow.delete(column);
    else ofRow.set(column, cell);
  }
  return { ...sheet, rows };
}
