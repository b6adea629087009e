import { type Cell, isEmpty, isErrorCell } from "../nouns/cell";

import { cellText } from "./cellText";

/** A label as typed, single-spaced; null for an empty cell or an error value. */
export function plainLabel(cell: Cell): string | null {
  return isEmpty(cell) || isErrorCell(cell) ? null : cellText(cell).trim().replace(/\s+/g, " ");
}
