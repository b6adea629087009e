import { type LookedAmounts, lookAtAmounts } from "./lookAtAmounts";
import { type LookedDates, lookAtDates } from "./lookAtDates";
import { type LookedNames, lookAtNames } from "./lookAtNames";
import type { Block, BlockColumn } from "./readBlock";
import { type RowAside, rowsAside } from "./rowsAside";
import { type ColumnNumber, totalAtEnd } from "./totalAtEnd";

/** A block's column with what was read in it. */
export type LookedColumn = { readonly column: BlockColumn } & (
  | ({ readonly kind: "amount" } & LookedAmounts)
  | ({ readonly kind: "date" } & LookedDates)
  | ({ readonly kind: "label" } & LookedNames)
);

/** A block with every column read, rows that belong to no plant set aside. */
export interface LookedBlock {
  readonly block: Block;
  readonly columns: readonly LookedColumn[];
  readonly aside: readonly RowAside[];
}

/** Reads every column of a block by its kind. */
export function lookAtBlock(block: Block): LookedBlock {
  const rows = rowsAside(block);
  const skip = new Set(rows.map(({ row }) => row));
  const columns = block.columns.map((column) => lookAtColumn(column, skip));
  const ends = block.columns.some(({ kind }) => kind === "label")
    ? []
    : columns.flatMap((column) => endRow(column) ?? []);
  return { block, columns, aside: [...rows, ...ends] };
}

function lookAtColumn(column: BlockColumn, skip: ReadonlySet<number>): LookedColumn {
  const { cells, heading } = column;
  switch (column.kind) {
    case "amount":
      return { column, kind: "amount", ...lookAtAmounts(cells, heading, skip) };
    case "date":
      return { column, kind: "date", ...lookAtDates(cells, skip) };
    case "label":
      return { column, kind: "label", ...lookAtNames(cells, skip) };
  }
}

/** A total or an average at the end of a column of amounts; beside labels, the label of its row tells. */
function endRow(looked: LookedColumn): RowAside | null {
  if (looked.kind !== "amount") return null;
  const { column, values } = looked;
  const numbers: ColumnNumber[] = [];
  for (const [index, value] of values.entries()) {
    if (!Number.isNaN(value)) numbers.push({ value, index, numberCell: typeof column.cells[index] === "number" });
  }
  const end = totalAtEnd(numbers);
  return end === null ? null : { row: end.index, at: column.at, why: end.row };
}
