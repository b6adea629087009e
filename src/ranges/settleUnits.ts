import type { CellMeaning } from "./cellMeaning";
import { fittingUnit } from "./fittingUnit";
import { middleSize } from "./middleSize";
import { convert, type Unit } from "./unit";

/** A column's meanings with every amount in the column's unit. */
export interface SettledColumn {
  readonly unit: Unit | null;
  readonly cells: readonly SettledCell[];
  /** Whether a bare number of the column is left out as "unit-unclear": asked for those that are not among the cells. */
  readonly isUnclear: (bare: number) => boolean;
}

type AmountMeaning = Extract<CellMeaning, { means: "amount" }>;

/** A cell's meaning once the column's unit is known. */
export type SettledCell =
  | Exclude<CellMeaning, AmountMeaning>
  | {
      readonly means: "amount";
      /** In the column's unit. */
      readonly value: number;
      readonly read: AmountMeaning["read"] | "unit-converted";
    };

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
 *    knows what the bare numbers are. Of one unit typed, cells of the rarer sort, typed or bare, that lie more than
 *    ten times above or below the middle of the other sort are left out ("12 cm" among 177 and 180); where both are as
 *    many, the typed ones.
 *
 * "None" and 0 are 0 in any unit, and of neither sort.
 *
 * @param beside bare numbers of the column that are not among the cells, as most are and need no reading
 */
export function settleUnits(
  meanings: readonly CellMeaning[],
  named: Unit | null,
  beside: Float64Array = NO_NUMBERS,
): SettledColumn {
  const typed = typedUnits(meanings);
  if (named !== null || typed.length === 0) return inUnit(meanings, named, ALL_CLEAR);
  const middle = middleOf(meanings.filter(isBare), beside);
  const fitting = middle === 0 ? (typed[0] ?? null) : fittingUnit(meanings, middle);
  if (fitting !== null) return inUnit(meanings, fitting, ALL_CLEAR);
  if (new Set(typed).size > 1) return withoutUnits(meanings);
  const unclear = farOff(meanings, beside);
  const clear = meanings.filter(isTyped).find((cell) => !isUnclear(cell, unclear));
  return inUnit(meanings, clear?.unit ?? null, unclear);
}

/** A column of bare numbers, in which nobody knows what an amount with a unit says: 12 fruit, 14 fruit, "200 g". */
export function withoutUnits(meanings: readonly CellMeaning[]): SettledColumn {
  return inUnit(meanings, null, ALL_CLEAR);
}

/** Which amounts have no clear unit, by their value: of those with a unit typed beside them, and of bare ones. */
interface Unclear {
  readonly typed: (value: number) => boolean;
  readonly bare: (value: number) => boolean;
}

const NO_NUMBERS = new Float64Array();
const ALL_CLEAR: Unclear = { typed: () => false, bare: () => false };
const UNCLEAR: SettledCell = { means: "unusable", why: "unit-unclear" };

function inUnit(meanings: readonly CellMeaning[], unit: Unit | null, unclear: Unclear): SettledColumn {
  const cells = meanings.map((cell) => (isUnclear(cell, unclear) ? UNCLEAR : settle(cell, unit)));
  return { unit, cells, isUnclear: unclear.bare };
}

function isUnclear(cell: CellMeaning, { typed, bare }: Unclear): boolean {
  return cell.means === "amount" && (cell.unit === null ? bare : typed)(cell.value);
}

function typedUnits(meanings: readonly CellMeaning[]): readonly Unit[] {
  return meanings.map((cell) => (cell.means === "amount" ? cell.unit : null)).filter((unit) => unit !== null);
}

function isTyped(cell: CellMeaning): cell is AmountMeaning {
  return cell.means === "amount" && cell.unit !== null && cell.value !== 0;
}

function isBare(cell: CellMeaning): cell is AmountMeaning {
  return cell.means === "amount" && cell.unit === null && cell.value !== 0;
}

function settle(cell: CellMeaning, unit: Unit | null): SettledCell {
  if (cell.means !== "amount" || cell.unit === null) return cell;
  const value = unit === null ? null : convert(cell.value, cell.unit, unit);
  return value === null ? UNCLEAR : { means: "amount", value, read: "unit-converted" };
}

/** Amounts of the rarer sort, typed unit or bare, that are far from the middle of the other sort; 0 is never far. */
function farOff(meanings: readonly CellMeaning[], beside: Float64Array): Unclear {
  const withUnit = meanings.filter(isTyped);
  const bare = meanings.filter(isBare);
  return withUnit.length <= bare.length + beside.filter((number) => number !== 0).length
    ? { ...ALL_CLEAR, typed: farFrom(middleOf(bare, beside)) }
    : { ...ALL_CLEAR, bare: farFrom(middleOf(withUnit, NO_NUMBERS)) };
}

function farFrom(middle: number): (value: number) => boolean {
  return (value) => {
    const size = Math.abs(value);
    return size > 0 && (size > FAR * middle || size * FAR < middle);
  };
}

/** The middle size of cells and of the bare numbers beside them. */
function middleOf(cells: readonly AmountMeaning[], beside: Float64Array): number {
  const numbers = new Float64Array(cells.length + beside.length);
  numbers.set(cells.map(({ value }) => value));
  numbers.set(beside, cells.length);
  return middleSize(numbers);
}
