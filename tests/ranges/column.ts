import type { Cell } from "../../src/nouns/cell";
import type { CellRange } from "../../src/nouns/cellRange";

/** One column that starts at D1 of the sheet "Beds", unless told otherwise. */
export function column(cells: readonly Cell[], changes: Partial<CellRange> = {}): CellRange {
  return block(
    cells.map((cell) => [cell]),
    changes,
  );
}

/** A block of cells that starts at D1 of the sheet "Beds", unless told otherwise. */
export function block(cells: readonly (readonly Cell[])[], changes: Partial<CellRange> = {}): CellRange {
  const corner = { sheet: "Beds", row: 1, column: 4 };
  return { argument: "usual", cells, corner, zerosVerified: true, ...changes };
}
