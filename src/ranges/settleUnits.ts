import type { CellMeaning } from "./cellMeaning";
import { fittingUnit } from "./fittingUnit";
import { middleSize } from "./middleSize";
import { convert, type Unit } from "./unit";

/** A column's meanings with every amount in the column's unit. */
export interface SettledColumn {
  readonly unit: Unit | null;
  readonly cells: readonly SettledCell[];
}

/** A cell's meaning once the column's unit is known; `converted` when a unit was typed in the cell. */
export type SettledCell = CellMeaning & { readonly converted?: true };

/** How far a typed-in amount may be from the middle of the others, if both are to be in one unit. */
const FAR = 10;

/**
 * Brings the amounts of a column to one unit. Our own rule, as no source rules it, and the only one: LOOKOVER, the
 * tallies and the comparisons read a column alike.
 *
 * 1. The column's unit is the one its heading names, or else the one asked for; bare numbers are in it.
 * 2. Where nobody names one, it is that of the units typed in the cells, or else grams, in which all that was typed
 *    comes near the bare numbers (`fittingUnit`). Without bare numbers, the first unit typed is taken.
 * 3. Cells that name another unit are converted. One of another kind (cm in a column of g) has no clear unit.
 * 4. No unit fits, or several do: of several units typed, all cells with one are left out as "unit-unclear", as nobody
 *    knows what the bare numbers are. Of one unit typed, cells of the rarer sort, typed or bare, that lie ten times
 *    above or below the middle of the other sort are left out ("12 cm" among 177 and 180).
 *
 * "None" and 0 are 0 in any unit.
 *
 * @param beside bare numbers of the column that are not among the cells, as most are and need no reading
 */
export function settleUnits(
  meanings: readonly CellMeaning[],
  named: Unit | null,
  beside: Float64Array = NONE,
): SettledColumn {
  const typed = typedUnits(meanings);
  if (named !== null || typed.length === 0) return inUnit(meanings, named, NOBODY);
  const middle = middleOf(meanings.filter(isBare), beside);
  const fitting = middle === 0 ? (typed[0] ?? null) : fittingUnit(meanings, middle);
  if (fitting !== null) return inUnit(meanings, fitting, NOBODY);
  if (new Set(typed).size > 1) return { unit: null, cells: meanings.map((cell) => withoutUnit(cell)) };
  const unclear = farOff(meanings, beside);
  return inUnit(meanings, typedUnits(meanings.filter((cell) => !unclear.has(cell)))[0] ?? null, unclear);
}

function inUnit(meanings: readonly CellMeaning[], unit: Unit | null, unclear: ReadonlySet<CellMeaning>): SettledColumn {
  return { unit, cells: meanings.map((cell) => (unclear.has(cell) ? UNCLEAR : settle(cell, unit))) };
}

function typedUnits(meanings: readonly CellMeaning[]): readonly Unit[] {
  return meanings.flatMap((cell) => (cell.means === "amount" && cell.unit !== null ? [cell.unit] : []));
}

const NONE = new Float64Array();
const NOBODY: ReadonlySet<CellMeaning> = new Set();
const UNCLEAR: SettledCell = { means: "unusable", why: "unit-unclear" };

function isBare(cell: CellMeaning): boolean {
  return cell.means === "amount" && cell.unit === null && cell.read !== "none-word";
}

function withoutUnit(cell: CellMeaning): SettledCell {
  return cell.means === "amount" && cell.unit !== null ? UNCLEAR : cell;
}

function settle(cell: CellMeaning, unit: Unit | null): SettledCell {
  if (cell.means !== "amount" || cell.unit === null || unit === null) return cell;
  const value = convert(cell.value, cell.unit, unit);
  return value === null ? UNCLEAR : { ...cell, value, unit, converted: true };
}

/** Cells of the rarer sort, typed unit or bare, that are far from the middle of the other sort; 0 is never far. */
function farOff(meanings: readonly CellMeaning[], beside: Float64Array): ReadonlySet<CellMeaning> {
  const withUnit = meanings.filter((cell) => cell.means === "amount" && cell.unit !== null);
  if (withUnit.length === 0) return new Set();
  const bare = meanings.filter(isBare);
  const isUnitRarer = withUnit.length <= bare.length + beside.length;
  const [rarer, others] = isUnitRarer ? [withUnit, bare] : [bare, withUnit];
  const middle = middleOf(others, isUnitRarer ? beside : NONE);
  const isFar = (size: number): boolean => size > 0 && middle > 0 && (size > FAR * middle || size * FAR < middle);
  return new Set(rarer.filter((cell) => isFar(sizeOf(cell))));
}

function sizeOf(cell: CellMeaning): number {
  return cell.means === "amount" ? Math.abs(cell.value) : 0;
}

/** The middle size of cells and of the bare numbers beside them. */
function middleOf(cells: readonly CellMeaning[], beside: Float64Array): number {
  const numbers = new Float64Array(cells.length + beside.length);
  numbers.set(cells.map(sizeOf));
  numbers.set(beside, cells.length);
  return middleSize(numbers);
}
