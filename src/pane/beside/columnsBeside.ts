import { quotedSheet } from "../../formula/quoted";
import type { Sheet } from "../../host/sheet";
import { type Cell, isEmpty } from "../../nouns/cell";
import type { CellRange, Corner } from "../../nouns/cellRange";
import { addressOf } from "../address";

/** A range of one column as it stands in its sheet, and what stands beside it. */
export interface Stood {
  readonly corner: Corner;
  /** How many cells of the range hold its heading: 0 or 1. */
  readonly headed: number;
  /** Its last row in the sheet. */
  readonly bottom: number;
  /** The columns of the same table, left and right of it; its own is not among them. */
  readonly beside: readonly BesideColumn[];
}

/** A column that stands beside a range. */
export interface BesideColumn {
  /** The sheet's column, from 1. */
  readonly column: number;
  /** The texts right above the range's first amount, without an empty cell between: headings, and rows of others. */
  readonly above: readonly string[];
  /** As many cells as the range has amounts, row by row. */
  readonly cells: readonly Cell[];
}

/** So many columns on either side are looked at. */
const REACH = 10;

/**
 * What stands beside a range: the columns left and right of it without an empty one between.
 *
 * @param headed whether the range's first cell was read as its heading
 * @returns null when the range stands in no sheet, or is wider than one column
 */
export async function columnsBeside(range: CellRange, headed: boolean, sheet: Sheet): Promise<Stood | null> {
  const { corner, cells } = range;
  if (corner === null || cells.some((row) => row.length !== 1)) return null;
  const [top, bottom] = [corner.row + (headed ? 1 : 0), corner.row + cells.length - 1];
  const left = Math.max(1, corner.column - REACH);
  const [first, last] = [
    addressOf({ row: 1, column: left }),
    addressOf({ row: bottom, column: corner.column + REACH }),
  ];
  const { cells: rows } = await sheet.read(`${quotedSheet(corner.sheet)}!${first}:${last}`, corner.sheet);
  const at = (column: number): BesideColumn => {
    const all = rows.map((row) => row[column - left] ?? null);
    return { column, above: textsAbove(all.slice(0, top - 1)), cells: all.slice(top - 1) };
  };
  const leftward = Array.from({ length: corner.column - left }, (_, step) => at(corner.column - 1 - step));
  const rightward = Array.from({ length: REACH }, (_, step) => at(corner.column + 1 + step));
  return { corner, headed: headed ? 1 : 0, bottom, beside: [...untilEmpty(leftward), ...untilEmpty(rightward)] };
}

function textsAbove(cells: readonly Cell[]): readonly string[] {
  const run = cells.slice(cells.findLastIndex(isEmpty) + 1);
  return run.flatMap((cell) => (typeof cell === "string" ? [cell.trim()] : []));
}

function untilEmpty(columns: readonly BesideColumn[]): readonly BesideColumn[] {
  const empty = columns.findIndex(({ cells }) => cells.every(isEmpty));
  return empty < 0 ? columns : columns.slice(0, empty);
}
