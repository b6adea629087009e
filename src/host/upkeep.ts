import type { Cell } from "../nouns/cell";

/** A cell with one of our calls that Excel does not recognise: it shows #NAME?. */
export interface Stranger {
  readonly sheet: string;
  readonly address: string;
  /** The formula as it was typed once: "=FAIRBED.UPDOWN(B2,C2)". */
  readonly formula: string;
}

/** A formula that was replaced by what it showed. */
export interface Kept {
  readonly sheet: string;
  /** The cell of the formula, and the cells its table reached: "C5:D20". */
  readonly address: string;
  readonly formula: string;
}

/**
 * What a workbook needs that was opened without Fairbed, or goes to somebody who does not have it. Excel alone can do
 * it. Promises reject with a `SheetTrouble`.
 */
export interface Upkeep {
  strangers(): Promise<readonly Stranger[]>;
  /** Enters the formulas anew, so that Excel looks their functions up again. */
  enterAnew(strangers: readonly Stranger[]): Promise<void>;
  /** Replaces a formula by what it shows, a whole table by its cells; null when the cell holds no formula. */
  keepAsText(sheet: string, address: string): Promise<Kept | null>;
  /** Puts the formula back. */
  bringBack(kept: Kept): Promise<void>;
}

/** How a cell's content is typed so that Excel takes it as it is: a text never as a number, a date or a formula. */
export function asTyped(value: Cell): string | number | boolean {
  if (value === null) return "";
  if (typeof value === "object") return `'${value.error}`;
  return typeof value === "string" ? `'${value}` : value;
}
