import type { Cell } from "../../../nouns/cell";
import type { ReadColumn } from "../../../nouns/findings/lookedOver";
import { cellShown } from "./cleanCell";

/** A column's heading in the copy; `why` is null where it is what it was. */
export interface CleanHeading {
  readonly text: string;
  readonly was: string;
  readonly why: string | null;
}

const names = { amount: "Amount", date: "Date", label: "Name" } as const;

/**
 * A heading for every column: the sheet's own, with the unit in brackets where cells alone named it; else what the
 * column holds, with its number.
 *
 * @param above the cell above the column; null where the table has no headings
 */
export function cleanHeading(above: Cell, read: ReadColumn | null, number: number): CleanHeading {
  const own = cellShown(above);
  const name = own === "" ? `${read === null ? "Note" : names[read.kind]} ${number}` : own;
  const unit = read === null || read.unitInHeading ? null : read.unit;
  const text = unit === null ? name : `${name} (${unit})`;
  if (text === own) return { text, was: own, why: null };
  const why = own === "" ? "A column needs a heading." : "The unit was typed in the cells alone.";
  return { text, was: own === "" ? "no heading" : own, why };
}
