import type { Book } from "../../../files/book";
import { withoutEnding } from "./withoutEnding";

/** The file that the grid's workbook came from. */
export interface OpenFile {
  /** "Harvest.xlsx" */
  readonly name: string;
  /** Its bytes; null of a workbook that no .xlsx file stands behind. */
  readonly bytes: Uint8Array | null;
  /** The workbook as the file had it. */
  readonly book: Book;
  /** The workbook as the grid worked it out when the file was opened. */
  readonly first: Book;
  /** What would no longer fit if rows or columns were inserted. */
  readonly tied: readonly string[];
}

const nothing: Book = { sheets: [], looks: [], names: [] };

/** What stands behind the practice workbook: no file. */
export const noFile: OpenFile = { name: "Fairbed practice.xlsx", bytes: null, book: nothing, first: nothing, tied: [] };

/** The name of a copy: "Harvest copy.xlsx". A table of text becomes a workbook. */
export function copyName(name: string): string {
  return `${withoutEnding(name)} copy${/\.xlsm$/i.test(name) ? ".xlsm" : ".xlsx"}`;
}
