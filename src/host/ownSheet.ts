import type { NewSheet, NumberFormat } from "./newSheet";

/** One bar of a chart. */
export interface ChartBar {
  readonly name: string;
  readonly figure: number;
  /** Whether it is what the others are set against. */
  readonly usual: boolean;
}

/** A chart of bars, one a row of a table, all from one zero. */
export interface NewChart {
  readonly title: string;
  readonly bars: readonly ChartBar[];
  /** How the figures are written at the bars. */
  readonly format: NumberFormat;
  /** The cells that hold the bars' names, one column: "A18:A19". */
  readonly names: string;
  /** The cells that hold their figures, one column: "E18:E19". */
  readonly figures: string;
  /** The empty cells that the chart covers: "A22:F36". */
  readonly place: string;
}

/** A sheet that Fairbed may later write anew. */
export interface OwnSheet extends NewSheet {
  /** Blocks of cells that are tables; the first row of each holds its headings, texts of which no two are alike. */
  readonly tables: readonly string[];
  readonly charts: readonly NewChart[];
}

/**
 * Sheets of ours are marked by a name that the workbook gives to their first cell: it goes with the file, follows a
 * sheet that is renamed or moved, does not go over to a duplicate, and is gone with the sheet.
 */
const mark = "Fairbed_report_";

/** Whether a name of the workbook's marks a sheet of ours. */
export function isMark(name: string): boolean {
  return name.toLowerCase().startsWith(mark.toLowerCase());
}

/** A mark that no sheet has had, by those of the workbook's names that are marks: its number tells the newest. */
export function freeMark(marks: readonly string[]): string {
  return `${mark}${Math.max(0, ...marks.map(numberOfMark)) + 1}`;
}

/** A mark's number: later ones are greater. */
export function numberOfMark(name: string): number {
  return Number(/\d+$/.exec(name)?.[0] ?? 0);
}
