import { type Cell, isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import { widthOf } from "./cellsOf";
import { type ColumnKind, columnKind, isHeadingLike } from "./columnKind";

/** What a column that is looked at holds. */
type BlockKind = Exclude<ColumnKind, "notes">;

/** One column of a block, without its heading. */
export interface BlockColumn {
  readonly kind: BlockKind;
  /** From 0. */
  readonly at: number;
  readonly heading: string | null;
  readonly cells: readonly Cell[];
}

/** A block of cells as columns of dates, names and amounts. */
export interface Block {
  /** How many rows stand above the first one read: 1 with a heading row. */
  readonly from: number;
  /** Rows without the heading row and without empty rows at the end. */
  readonly rows: number;
  /** Columns of notes and empty columns aside. */
  readonly columns: readonly BlockColumn[];
}

/** Headings over names alone, where nothing below tells them from a name. */
const OVER_NAMES = /^(?:treatment|mulch|variety|cultivar|plant|bed|block|plot|label|name|crop|group)s?\b/i;

/**
 * Reads a block with or without a heading row, each column as what most of its cells are (`columnKind`).
 *
 * The first row is a heading row when it holds nothing but texts that are no number and no date, above a column of
 * amounts or dates, or above names when it says so ("treatment"), and comes up no more below.
 *
 * @param kind what all columns are, null to find out
 */
export function readBlock(range: CellRange, kind: BlockKind | null): Block {
  const filled = range.cells.findLastIndex((row) => !row.every(isEmpty)) + 1;
  const given = range.cells.slice(0, filled);
  const columns = Array.from({ length: widthOf(range) }, (_, at) => given.map((row) => row[at] ?? null));
  const from = hasHeadingRow(columns, kind) ? 1 : 0;
  const looked = columns.flatMap((cells, at): readonly BlockColumn[] => {
    const heading = from === 1 && typeof cells[0] === "string" ? cells[0] : null;
    const below = cells.slice(from);
    const found = kind ?? columnKind(below, heading);
    return found === "notes" || below.every(isEmpty) ? [] : [{ kind: found, at, heading, cells: below }];
  });
  return { from, rows: Math.max(0, filled - from), columns: looked };
}

function hasHeadingRow(columns: readonly (readonly Cell[])[], kind: BlockKind | null): boolean {
  const first = columns.map((cells) => cells[0] ?? null);
  if (!first.every(isHeadingLike) || first.every(isEmpty)) return false;
  return columns.some((cells) => {
    const [heading = null, ...below] = cells;
    if (typeof heading !== "string" || below.length === 0 || below.includes(heading)) return false;
    const found = kind ?? columnKind(below, heading);
    return found === "amount" || found === "date"
      ? below.some((cell) => !isEmpty(cell))
      : OVER_NAMES.test(heading.trim());
  });
}
