import type { LookedBlock, LookedColumn } from "../ranges/lookAtBlock";

/** A row that equals an earlier one in date, names and amounts. */
export interface DoubleRow {
  readonly row: number;
  readonly like: number;
}

/**
 * Rows entered twice, maybe (METHODS 8.11). Where a block has neither dates beside names nor names in two columns,
 * equal rows are no wonder and none is given. A row without an amount, as one set aside is, has nothing entered twice.
 */
export function doubleRows({ block, columns }: LookedBlock): readonly DoubleRow[] {
  const labels = columns.filter(({ kind }) => kind === "label").length;
  const dated = columns.some(({ kind }) => kind === "date");
  const amounts = columns.filter((column) => column.kind === "amount");
  if (labels < (dated ? 1 : 2)) return [];
  const seen = new Map<string, number>();
  const doubles: DoubleRow[] = [];
  for (let row = 0; row < block.rows; row++) {
    if (amounts.every(({ values }) => Number.isNaN(values[row] ?? Number.NaN))) continue;
    const key = columns.map((column) => keyAt(column, row)).join("\t");
    const like = seen.get(key);
    if (like === undefined) seen.set(key, row);
    else doubles.push({ row, like });
  }
  return doubles;
}

function keyAt(column: LookedColumn, row: number): string {
  if (column.kind === "label") return column.keys[row] ?? "";
  const number = (column.kind === "date" ? column.serials : column.values)[row] ?? Number.NaN;
  return Number.isNaN(number) ? String(column.column.cells[row] ?? "") : String(number);
}
