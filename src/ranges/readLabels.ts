import { type Cell, isErrorCell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Place } from "../nouns/place";
import { cellsOf, filledLength, isEmpty } from "./cellsOf";
import type { Extent } from "./extent";
import { type LabelKind, labelKey } from "./labelKey";
import { cellText } from "./option";
import { placeOf } from "./placeOf";
import { whereIs } from "./whereIs";

/** One row's label, spelt as its first like was; null where the cell is empty or holds an error. */
export interface Label {
  readonly label: string | null;
  readonly place: Place;
}

/** A range of treatment, bed or plant labels: one entry per cell, row by row, without the heading. */
export interface Labels {
  readonly argument: string;
  /** Where the whole range stands, for sentences. */
  readonly where: string;
  /** The heading in the first cell, if there is one. */
  readonly name: string | null;
  readonly entries: readonly Label[];
  /** The different labels in order of appearance. */
  readonly names: readonly string[];
}

/**
 * Reads treatment, bed or plant labels; numbers are labels too. Labels that mean the same (`labelKey`) are spelt as the
 * first of them, without spaces round it.
 *
 * @param extent a heading is taken off only when `extent.heading` says so: a label alone does not tell. See
 *   `readLabelled`, which asks the amounts beside them.
 */
export function readLabels(range: CellRange, kind: LabelKind, extent: Extent = {}): Labels {
  const { length = filledLength(range), heading = false } = extent;
  const from = heading ? 1 : 0;
  const cells = cellsOf(range);
  const spelt = new Map<string, string>();
  // most labels come again in the very letters of before
  const met = new Map<Cell, string | null>();
  const labelIn = (cell: Cell): string | null => {
    const old = met.get(cell);
    if (old !== undefined) return old;
    const label = spell(cell, kind, spelt);
    met.set(cell, label);
    return label;
  };
  const entries = cells.slice(from, length).map((cell, at) => {
    return { label: labelIn(cell), place: placeOf(range, from + at) };
  });
  return {
    argument: range.argument,
    where: whereIs(range),
    name: heading ? plainLabel(cells[0] ?? null) : null,
    entries,
    names: [...spelt.values()],
  };
}

/** The label as first spelt; notes the spelling when it is new. */
function spell(cell: Cell, kind: LabelKind, spelt: Map<string, string>): string | null {
  const label = plainLabel(cell);
  if (label === null) return null;
  const key = labelKey(label, kind);
  const known = spelt.get(key) ?? label;
  spelt.set(key, known);
  return known;
}

/** A label as typed, single-spaced; null for an empty cell or an error value. */
export function plainLabel(cell: Cell): string | null {
  return isEmpty(cell) || (cell !== null && isErrorCell(cell)) ? null : cellText(cell).trim().replace(/\s+/g, " ");
}
