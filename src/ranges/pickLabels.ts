import type { Cell } from "../nouns/cell";
import { type CellColumn, cellIn } from "./columnBelow";
import { type LabelKind, labelKey } from "./labelKey";
import { plainLabel } from "./plainLabel";

/** A long column of labels: each row's label by its number among the names. */
export interface PickLabels {
  /** The different labels in order of appearance, each spelt as its first. */
  readonly names: readonly string[];
  /** One number a row; −1 where the cell is empty or holds an error. */
  readonly ids: Int32Array;
}

/**
 * Reads labels by the rules of `readLabels`, each spelling once only: a log of a season repeats few labels often.
 *
 * @param cells without the heading
 */
export function readPickLabels(cells: CellColumn, kind: LabelKind): PickLabels {
  const numbering = numberLabels(kind);
  const ids = new Int32Array(cells.length);
  let before: Cell = null;
  let id = -1;
  for (let row = 0; row < cells.length; row++) {
    const cell = cellIn(cells, row);
    if (cell !== before) {
      before = cell;
      id = numbering.idOf(cell);
    }
    ids[row] = id;
  }
  return { names: numbering.names, ids };
}

interface Numbering {
  readonly names: readonly string[];
  readonly idOf: (cell: Cell) => number;
}

function numberLabels(kind: LabelKind): Numbering {
  const names: string[] = [];
  const byCell = new Map<Cell, number>();
  const byKey = new Map<string, number>();
  return { names, idOf: (cell) => byCell.get(cell) ?? newCell(cell) };

  function newCell(cell: Cell): number {
    const label = plainLabel(cell);
    const id = label === null ? -1 : idOfLabel(label);
    byCell.set(cell, id);
    return id;
  }

  function idOfLabel(label: string): number {
    const key = labelKey(label, kind);
    const known = byKey.get(key);
    if (known !== undefined) return known;
    byKey.set(key, names.length);
    return names.push(label) - 1;
  }
}
