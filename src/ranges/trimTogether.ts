import { isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";

/**
 * Ranges that belong together without the rows that are empty in all of them at the end, so that B2:B1000 may be given.
 *
 * A range that is shorter than the others has empty rows there. Where every row is empty, no row is left.
 */
export function trimTogether(ranges: readonly CellRange[]): readonly CellRange[] {
  const rows = Math.max(0, ...ranges.map(filledRows));
  return ranges.map((range) => ({ ...range, cells: range.cells.slice(0, rows) }));
}

function filledRows({ cells }: CellRange): number {
  return cells.findLastIndex((row) => !row.every(isEmpty)) + 1;
}
