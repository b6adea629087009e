import type { Cell } from "../../nouns/cell";
import type { Area, BookCell, BookSheet } from "../book";

/** What a file has in a cell: of a filled block, every cell has its own value. */
export interface EffectiveCell {
  readonly value: Cell;
  readonly formula?: string;
  /** The block that the formula fills, where that is more than its own cell. */
  readonly fills?: Area;
  readonly look?: number;
}

/** The cells of a sheet by row and column, with the values of filled blocks in their places. */
export function effectiveCells({ rows }: BookSheet): Map<number, Map<number, EffectiveCell>> {
  const cells = new Map<number, Map<number, EffectiveCell>>();
  for (const [row, ofRow] of rows) cells.set(row, new Map(ofRow));
  for (const [row, ofRow] of rows) {
    for (const [column, cell] of ofRow) if (cell.spill !== undefined) fill(cells, { row, column }, cell);
  }
  return cells;
}

function fill(
  cells: Map<number, Map<number, EffectiveCell>>,
  { row, column }: { row: number; column: number },
  { spill = [], ...own }: BookCell,
): void {
  for (const [down, values] of spill.entries()) {
    const ofRow = cells.get(row + down) ?? new Map<number, EffectiveCell>();
    cells.set(row + down, ofRow);
    for (const [across, value] of values.entries()) {
      ofRow.set(column + across, { ...ofRow.get(column + across), value });
    }
  }
  const bottom = row + spill.length - 1;
  const right = spill.reduce((last, values) => Math.max(last, column + values.length - 1), column);
  cells.get(row)?.set(column, { ...own, fills: { top: row, left: column, bottom, right } });
}

/** Whether two cells would be written alike. */
export function sameCell(one: EffectiveCell | undefined, other: EffectiveCell | undefined): boolean {
  return (
    sameValue(one?.value ?? null, other?.value ?? null) &&
    sameFormula(one, other) &&
    (one?.look ?? 0) === (other?.look ?? 0)
  );
}

/** Whether two cells have the same formula for the same block. */
export function sameFormula(one: EffectiveCell | undefined, other: EffectiveCell | undefined): boolean {
  return (
    one?.formula === other?.formula &&
    one?.fills?.bottom === other?.fills?.bottom &&
    one?.fills?.right === other?.fills?.right
  );
}

function sameValue(one: Cell, other: Cell): boolean {
  if (typeof one !== "object" || typeof other !== "object") return one === other;
  return one?.error === other?.error;
}
