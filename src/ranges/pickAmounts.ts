import type { Problem } from "../nouns/problem";
import type { Unusable } from "../nouns/sample";
import { type CellMeaning, cellMeanings } from "./cellMeaning";
import { type CellColumn, cellIn } from "./columnBelow";
import { excelDates } from "./excelDates";
import type { AskedUnit } from "./readUnit";
import { type SettledCell, type SettledColumn, settleUnits, withoutUnits } from "./settleUnits";
import { convert, type Unit } from "./unit";

/** A long column of amounts in one unit. */
export interface PickAmounts {
  /** One number a row; NaN where there is none. */
  readonly values: Float64Array;
  readonly unit: Unit | null;
  /** Rows that say that their plant was lost. */
  readonly lost: ReadonlySet<number>;
  /** Rows of a plant whose amount is missing, and why. */
  readonly missing: ReadonlyMap<number, Unusable>;
  /** Rows whose number had a unit or a mark beside it. */
  readonly readInto: ReadonlySet<number>;
  /** Zeros that may be empty cells, because the host may hand over an empty cell as 0. */
  readonly zerosUnverified: number;
}

/** Which rows to read, and the units that are named. */
export interface AmountRules {
  /** False for a row of no plant, which is not looked at. */
  readonly counts: (row: number) => boolean;
  readonly headingUnit: Unit | null;
  /** The unit asked for. */
  readonly unit: AskedUnit | null;
  readonly zerosVerified: boolean;
}

/**
 * Reads a log's amounts: numbers as they stand, anything else by `cellMeaning`; bare numbers are in the unit that the
 * heading names, else in the one asked for, else in the one that fits the units typed (`settleUnits`).
 *
 * @param cells without the heading
 * @returns units-differ when the heading's unit cannot be turned into the one asked for
 */
export function readPickAmounts(cells: CellColumn, rules: AmountRules): PickAmounts | Problem {
  const { headingUnit, unit } = rules;
  const cannot = unit !== null && headingUnit !== null && (unit === "count" || convert(1, headingUnit, unit) === null);
  if (cannot) {
    return { problem: "units-differ", first: "amounts", firstUnit: headingUnit, second: "unit", secondUnit: unit };
  }
  const raw = splitCells(cells, rules);
  const settled = settleTyped(raw, rules);
  leaveOutUnclear(raw, settled);
  placeTyped(raw, settled.cells);
  leaveOutDates(raw);
  if (unit === null || unit === "count" || settled.unit === null) return { ...raw, unit: settled.unit };
  convertAll(raw.values, settled.unit, unit);
  return { ...raw, unit };
}

/** A column taken apart: numbers in place, every other cell with its meaning. */
interface RawAmounts {
  readonly values: Float64Array;
  readonly zerosUnverified: number;
  readonly typedRows: readonly number[];
  readonly typed: readonly CellMeaning[];
  readonly lost: Set<number>;
  readonly missing: Map<number, Unusable>;
  readonly readInto: Set<number>;
}

function splitCells(cells: CellColumn, { counts, zerosVerified }: AmountRules): RawAmounts {
  const values = new Float64Array(cells.length).fill(Number.NaN);
  const typedRows: number[] = [];
  let zeros = 0;
  for (let row = 0; row < cells.length; row++) {
    const cell = cellIn(cells, row);
    if (!counts(row)) continue;
    if (typeof cell === "number" && Number.isFinite(cell)) {
      values[row] = cell;
      if (cell === 0) zeros++;
    } else typedRows.push(row);
  }
  const typed = cellMeanings(typedRows.map((row) => cellIn(cells, row)));
  return {
    values,
    zerosUnverified: zerosVerified ? 0 : zeros,
    typedRows,
    typed,
    lost: new Set(),
    missing: new Map(),
    readInto: new Set(),
  };
}

function settleTyped({ typed, values }: RawAmounts, { headingUnit, unit }: AmountRules): SettledColumn {
  if (unit === "count") return withoutUnits(typed);
  return settleUnits(typed, headingUnit ?? unit, typed.length === 0 ? NONE : knownOf(values));
}

const NONE = new Float64Array();

function knownOf(values: Float64Array): Float64Array {
  const known = new Float64Array(values.length);
  let count = 0;
  for (let row = 0; row < values.length; row++) {
    const value = values[row] ?? Number.NaN;
    if (!Number.isNaN(value)) known[count++] = value;
  }
  return known.subarray(0, count);
}

/** Numbers far from most amounts, which have a unit typed beside them. */
function leaveOutUnclear({ values, missing }: RawAmounts, { isUnclear }: SettledColumn): void {
  for (let row = 0; row < values.length; row++) {
    if (!isUnclear(values[row] ?? Number.NaN)) continue;
    values[row] = Number.NaN;
    missing.set(row, "unit-unclear");
  }
}

function placeTyped(raw: RawAmounts, cells: readonly SettledCell[]): void {
  for (const [at, row] of raw.typedRows.entries()) {
    const cell = cells[at];
    if (cell !== undefined) placeCell(raw, row, cell);
  }
}

function placeCell({ values, lost, missing, readInto }: RawAmounts, row: number, cell: SettledCell): void {
  if (cell.means === "lost") lost.add(row);
  else if (cell.means === "unusable") missing.set(row, cell.why);
  else {
    values[row] = cell.value;
    if (cell.read === "unit-converted" || cell.read === "mark-removed") readInto.add(row);
  }
}

/** Numbers that look like dates Excel made are no amounts (METHODS 4.1). */
function leaveOutDates({ values, missing, readInto }: RawAmounts): void {
  const isDate = excelDates(values);
  for (let row = 0; row < values.length; row++) {
    if (!isDate(values[row] ?? Number.NaN) || readInto.has(row)) continue;
    values[row] = Number.NaN;
    missing.set(row, "date");
  }
}

function convertAll(values: Float64Array, from: Unit, to: Unit): void {
  if (from === to) return;
  for (const [row, value] of values.entries()) {
    if (!Number.isNaN(value)) values[row] = convert(value, from, to) ?? Number.NaN;
  }
}
