import { type Cell, isEmpty } from "../nouns/cell";
import type { TotalRow } from "../nouns/reading";
import type { Block, BlockColumn } from "./readBlock";
import { totalLabels } from "./totalLabels";

/** A row that is no plant's and no pick's. */
export interface RowAside {
  readonly row: number;
  /** The column of the cell that says so, from 0. */
  readonly at: number;
  readonly why: "empty-row" | TotalRow;
}

/**
 * Rows of a block that are set aside before its columns are read (METHODS 3): empty ones, those whose label says total,
 * average or week, and those with an amount and no label at all.
 *
 * A label that says so beside a full row is a name ("Weekly feed"), and so is one used often (`totalLabels`).
 */
export function rowsAside({ rows, columns }: Block): readonly RowAside[] {
  const labels = columns.filter(({ kind }) => kind === "label");
  const amounts = columns.filter(({ kind }) => kind === "amount");
  const names = columns.filter(({ kind }) => kind !== "amount");
  const words = totalWords(labels);
  const aside: RowAside[] = [];
  for (let row = 0; row < rows; row++) {
    const found =
      emptyRow(columns, row) ??
      (words.size > 0 ? labelledRow(labels, names, { row, words }) : null) ??
      (labels.length > 0 ? unlabelledRow(labels, amounts, row) : null);
    if (found !== null) aside.push({ row, ...found });
  }
  return aside;
}

type Found = Omit<RowAside, "row">;

function emptyRow(columns: readonly BlockColumn[], row: number): Found | null {
  const [first] = columns;
  return first !== undefined && columns.every((column) => isEmptyAt(column, row))
    ? { at: first.at, why: "empty-row" }
    : null;
}

function labelledRow(
  labels: readonly BlockColumn[],
  names: readonly BlockColumn[],
  { row, words }: { readonly row: number; readonly words: ReadonlySet<Cell> },
): Found | null {
  const label = labels.find(({ cells }) => words.has(cells[row] ?? null));
  if (label === undefined) return null;
  const alone = names.length === 1 || names.some((column) => isEmptyAt(column, row));
  return alone ? { at: label.at, why: "label" } : null;
}

function unlabelledRow(labels: readonly BlockColumn[], amounts: readonly BlockColumn[], row: number): Found | null {
  if (!labels.every((column) => isEmptyAt(column, row))) return null;
  const amount = amounts.find(({ cells }) => typeof cells[row] === "number");
  return amount === undefined ? null : { at: amount.at, why: "no-label" };
}

/** The cells that name a row of totals, by their text. */
function totalWords(labels: readonly BlockColumn[]): ReadonlySet<Cell> {
  const uses = new Map<string, number>();
  for (const { cells } of labels) {
    for (const cell of cells) if (typeof cell === "string") uses.set(cell, (uses.get(cell) ?? 0) + 1);
  }
  return totalLabels(uses, labels[0]?.cells.length ?? 0);
}

function isEmptyAt({ cells }: BlockColumn, row: number): boolean {
  return isEmpty(cells[row] ?? null);
}
