import type { Cell } from "../nouns/cell";
import { type CellColumn, cellIn } from "./columnBelow";
import { readDates } from "./readDates";

/** A long column of dates. */
export interface PickDays {
  /** One number a row: Excel's number of the day, NaN where there is none for certain. */
  readonly serials: Float64Array;
  /** Rows whose date could not be read for certain, empty ones among them. */
  readonly unclear: readonly number[];
  /** False when no date names its year: the days between dates are right, their year is a stand-in. */
  readonly yearsKnown: boolean;
  /** The day of `start`, settled with the column; NaN where none was given or it is no date for certain. */
  readonly start: number;
}

/**
 * Reads the dates of a log by the rules of `readDates`, each different cell once only.
 *
 * @param cells without the heading
 * @param start one more date that is written like the others; null for none
 */
export function readPickDays(cells: CellColumn, start: Cell): PickDays {
  const different = [...differentCells(cells)];
  const range = {
    argument: "dates",
    cells: [...different, start].map((cell) => [cell]),
    corner: null,
    zerosVerified: true,
  };
  const { entries, yearsKnown } = readDates(range, { length: different.length + 1 });
  const days = entries.map((entry) => (entry.kind === "date" ? entry.serial : Number.NaN));
  const byCell = new Map(different.map((cell, at) => [cell, days[at] ?? Number.NaN]));
  return { ...rowByRow(cells, byCell), yearsKnown, start: days.at(-1) ?? Number.NaN };
}

/** Most rows of a log have the date of the row above. */
function differentCells(cells: CellColumn): ReadonlySet<Cell> {
  const different = new Set<Cell>();
  let before: Cell | undefined;
  for (let row = 0; row < cells.length; row++) {
    const cell = cellIn(cells, row);
    if (cell === before) continue;
    before = cell;
    different.add(cell);
  }
  return different;
}

function rowByRow(
  cells: CellColumn,
  byCell: ReadonlyMap<Cell, number>,
): { readonly serials: Float64Array; readonly unclear: readonly number[] } {
  const serials = new Float64Array(cells.length);
  const unclear: number[] = [];
  let before: Cell = null;
  let serial = Number.NaN;
  for (let row = 0; row < cells.length; row++) {
    const cell = cellIn(cells, row);
    if (cell !== before) {
      before = cell;
      serial = byCell.get(cell) ?? Number.NaN;
    }
    serials[row] = serial;
    if (Number.isNaN(serial)) unclear.push(row);
  }
  return { serials, unclear };
}
