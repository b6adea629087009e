import type { LookedBlock, LookedColumn } from "../ranges/lookAtBlock";

/** A row that equals an earlier one in date, names and amounts. */
export interface DoubleRow {
  readonly row: number;
  readonly like: number;
}

/**
 * Rows entered twice, maybe (METHODS 8.11). Where a block has amounts but neither dates beside names nor names in two
 * columns, equal rows are no wonder and none is given.
 */
export function doubleRows({ block, columns, aside }: LookedBlock): readonly DoubleRow[] {
  const labels = columns.filter(({ kind }) => kind === "label").length;
  const dated = columns.some(({ kind }) => kind === "date");
  const amounts = columns.filter((column) => column.kind === "amount");
  if (amounts.length === 0 || labels === 0 || (!dated && labels < 2)) return [];
  const skip = new Set(aside.map(({ row }) => row));
  const seen = new Map<string, number>();
  const doubles: DoubleRow[] = [];
  for (let row = 0; row < block.rows; row++) {
    if (skip.has(row) || amounts.every(({ values }) => Number.isNaN(values[row] ?? Number.NaN))) continue;
    const key = columns.map((column) => keyAt(column, row)).join("\t");
    const like = seen.get(key);
    if (like === undefined) seen.set(key, row);
    else doubles.push({ row, like });
  }
  return doubles;
}

function keyAt(column: LookedColumn, row: number): string {
  if (column.kind === "label") return column.keys[row] ?? "";
  const number = column.kind === "date" ? column.serials[row] : column.values[row];
  return number === undefined || Number.isNaN(number) ? String(column.column.cells[row] ?? "") : String(number);
}
