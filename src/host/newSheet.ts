/** How a written formula's result is to be shown. */
export type NumberFormat = "General" | "0%" | "0.0%" | "0" | "0.0" | "0.00" | "0.000" | "yyyy-mm-dd";

/** What one cell of a new sheet holds, and how it looks. */
export interface NewCell {
  /**
   * "text" stays the text it is, also when it looks like a formula, a number or a date; "date" is a day by its number
   * in the spreadsheet (1 is 1 January 1900 there); "formula" is in the neutral form: English names, commas, "=" first;
   * "blank" is an empty cell with a format, for what a formula's table will put there.
   */
  readonly kind: "text" | "number" | "date" | "formula" | "blank";
  readonly content: string | number;
  readonly format: NumberFormat;
  readonly bold: boolean;
}

/** Cells from an address ("B4") to the right and down; null leaves a cell empty. */
export interface PlacedCells {
  readonly address: string;
  /** Every row has as many cells as the first. */
  readonly rows: readonly (readonly (NewCell | null)[])[];
}

/** A sheet to be added to the workbook. */
export interface NewSheet {
  /** The name wanted; where it is taken, the sheet gets it with a number behind. */
  readonly name: string;
  readonly blocks: readonly PlacedCells[];
  /** Widths of the columns in pixels, from column A on. */
  readonly widths: readonly number[];
}

/** A text, whatever it looks like. */
export function textCell(content: string, look: { readonly bold?: boolean } = {}): NewCell {
  return { kind: "text", content, format: "General", bold: look.bold ?? false };
}

export function numberCell(content: number, format: NumberFormat = "General"): NewCell {
  return { kind: "number", content, format, bold: false };
}

/** A day by its number in the spreadsheet. */
export function dateCell(content: number): NewCell {
  return { kind: "date", content, format: "yyyy-mm-dd", bold: false };
}

export function formulaCell(content: string, look: Partial<Pick<NewCell, "format" | "bold">> = {}): NewCell {
  return { kind: "formula", content, format: look.format ?? "General", bold: look.bold ?? false };
}

/** An empty cell that a formula's table will fill. */
export function blankCell(format: NumberFormat): NewCell {
  return { kind: "blank", content: "", format, bold: false };
}
