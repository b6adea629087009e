import type { Cell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import { cellsOf, filledLength } from "./cellsOf";
import type { Extent } from "./extent";
import { type LabelKind, labelKey } from "./labelKey";
import { plainLabel } from "./plainLabel";

/** A range of treatment, bed or plant labels, without the heading. */
export interface Labels {
  /** The heading in the first cell, if there is one. */
  readonly name: string | null;
  /** One label a cell, row by row, spelt as its first like was; null where the cell is empty or holds an error. */
  readonly entries: readonly (string | null)[];
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
  const entries = cells.slice(heading ? 1 : 0, length).map(labelIn);
  return { name: heading ? plainLabel(cells[0] ?? null) : null, entries, names: [...spelt.values()] };
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
