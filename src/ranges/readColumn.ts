import type { CellRange } from "../nouns/cellRange";
import { cellMeaning } from "./cellMeaning";
import { cellsOf, filledLength } from "./cellsOf";
import type { Extent } from "./extent";
import { headingOf } from "./headingOf";
import { headingParts } from "./headingParts";
import { type SettledCell, settleUnits } from "./settleUnits";
import type { ColumnNumber } from "./totalAtEnd";
import type { Unit } from "./unit";

/** A range's amounts in one unit, before they become entries; the heading is taken off. */
export interface Column {
  /** The heading without its unit, null where there is none. */
  readonly name: string | null;
  readonly unit: Unit | null;
  /** Index of the first amount's cell within the range. */
  readonly from: number;
  readonly cells: readonly SettledCell[];
  /** The amounts among the cells, without "none". */
  readonly numbers: readonly ColumnNumber[];
}

/** Reads a range's cells in reading order and settles their unit. */
export function readColumn(range: CellRange, extent: Extent): Column {
  const given = cellsOf(range);
  const heading = extent.heading === false ? null : headingOf(given[0]);
  const from = (extent.heading ?? heading !== null) ? 1 : 0;
  const parts = heading === null ? { name: null, unit: null } : headingParts(heading);
  const meanings = given.slice(from, extent.length ?? filledLength(range)).map(cellMeaning);
  const { unit, cells } = settleUnits(meanings, parts.unit);
  const numbers: ColumnNumber[] = [];
  for (const [at, cell] of cells.entries()) {
    if (cell.means !== "amount" || cell.read === "none-word") continue;
    numbers.push({ value: cell.value, index: from + at, numberCell: typeof given[from + at] === "number" });
  }
  return { name: parts.name, unit, from, cells, numbers };
}
