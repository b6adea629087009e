import type { Cell } from "../nouns/cell";

/**
 * A workbook between a file and a grid: plain records, maps and lists, so that it crosses from the worker that reads
 * files to the page. Rows and columns count from 0.
 */
export interface Book {
  readonly sheets: readonly BookSheet[];
  /** The looks that cells name by their place in this list. */
  readonly looks: readonly Look[];
  readonly names: readonly BookName[];
}

/** A name for a block of cells. */
export interface BookName {
  readonly name: string;
  /** "Trial!$B$2:$B$9", without "=". */
  readonly reference: string;
}

/** One sheet. */
export interface BookSheet {
  readonly name: string;
  readonly hidden: boolean;
  /** Rows by number, in each the cells by column; a cell that is empty and looks like any other is absent. */
  readonly rows: ReadonlyMap<number, ReadonlyMap<number, BookCell>>;
  readonly merges: readonly Area[];
  /** Widths by column, in pixels; a column of the usual width is absent. */
  readonly widths: ReadonlyMap<number, number>;
}

/** A block of cells; both ends belong to it. */
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** One cell. */
export interface BookCell {
  /** Of a formula: its last result. Dates are serials counted from 1900, whatever the file counts from. */
  readonly value: Cell;
  /** In the grid's form ("=FAIRBED.COMPARETWO(A1:A9,B1:B9)"); absent for a plain value. */
  readonly formula?: string;
  /** The whole result of a formula that fills a block, its own cell first; absent where it fills its cell only. */
  readonly spill?: readonly (readonly Cell[])[];
  /** Place in the book's looks; absent where the cell looks like any other. */
  readonly look?: number;
  /** A chart that covers the cell, as wide and high as the cell's merge is. */
  readonly chart?: BookChart;
}

/** A chart of bars that lie, the first on top, all from one zero. */
export interface BookChart {
  readonly title: string;
  readonly bars: readonly { readonly name: string; readonly figure: number; readonly usual: boolean }[];
  /** How the figures are written at the bars, as a number format: "0.0". */
  readonly pattern: string;
}

/** How a cell looks; what is absent is as usual. */
export interface Look {
  /** Number format in Excel's neutral form: "0.0%", "yyyy-mm-dd". */
  readonly pattern?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Colour of the letters: "#1c2418". */
  readonly ink?: string;
  /** Colour behind them. */
  readonly fill?: string;
  readonly wrap?: boolean;
  readonly across?: "left" | "center" | "right";
  readonly down?: "top" | "middle" | "bottom";
}
