import type { CellMeaning } from "./cellMeaning";
import { convert, type Unit } from "./unit";

/** An amount with a unit typed beside it. */
interface TypedAmount {
  readonly value: number;
  readonly unit: Unit;
}

/** How far a typed amount may be from the middle of the bare numbers, if both are in one unit. */
const FAR = 10;

/**
 * The unit of a column's bare numbers where neither heading nor argument names it: the one of the units typed in its
 * cells, or else grams, in which every typed amount comes near the bare numbers ("0.235kg" among 180 and 300: grams).
 *
 * @param middle the middle size of the bare numbers
 * @returns null when no unit fits, or several do as well, so that nobody knows
 */
export function fittingUnit(meanings: readonly CellMeaning[], middle: number): Unit | null {
  const typed = meanings.filter(isTyped);
  if (typed.length === 0 || !(middle > 0)) return null;
  const fits = (unit: Unit): boolean =>
    typed.every((amount) => isNear(convert(amount.value, amount.unit, unit), middle));
  const units = [...new Set(typed.map(({ unit }) => unit))].filter(fits);
  if (units.length === 0 && fits("g")) return "g";
  return units.length === 1 ? (units[0] ?? null) : null;
}

function isTyped(meaning: CellMeaning): meaning is CellMeaning & TypedAmount & { readonly means: "amount" } {
  return meaning.means === "amount" && meaning.unit !== null;
}

function isNear(size: number | null, middle: number): boolean {
  if (size === null) return false;
  return size === 0 || (Math.abs(size) <= FAR * middle && Math.abs(size) * FAR >= middle);
}
