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
 * Reads the dates of a log by the rules of `readDates`.
 *
 * @param cells without the heading
 * @param start one more date that is written like the others; null for none
 */
export function readPickDays(cells: CellColumn, start: Cell): PickDays {
  const { entryOf, yearsKnown } = readDates([...differentCells(cells), start]);
  const serialOf = (cell: Cell): number => {
    const entry = entryOf(cell);
    return entry.kind === "date" ? entry.serial : Number.NaN;
  };
  return { ...rowByRow(cells, serialOf), yearsKnown, start: serialOf(start) };
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
  serialOf: (cell: Cell) => number,
): { readonly serials: Float64Array; readonly unclear: readonly number[] } {
  const serials = new Float64Array(cells.length);
  const unclear: number[] = [];
  let before: Cell = null;
  let serial = Number.NaN;
  for (let row = 0; row < cells.length; row++) {
    const cell = cellIn(cells, row);
    if (cell !== before) {
      before = cell;
      serial = serialOf(cell);
    }
    serials[row] = serial;
    if (Number.isNaN(serial)) unclear.push(row);
  }
  return { serials, unclear };
}
