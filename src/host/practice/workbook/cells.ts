import {
  BooleanNumber,
  CellValueType,
  HorizontalAlign,
  type ICellData,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";

/** How a cell of the practice workbook looks; everything else is the grid's default. */
type Pattern = "0%" | "0.0%" | "0" | "0.00" | "0.000";

const bold: IStyleData = { bl: BooleanNumber.TRUE };

/** A text cell. */
export function text(value: string): ICellData {
  return { v: value, t: CellValueType.STRING };
}

/** A text cell in bold. */
export function heading(value: string): ICellData {
  return { ...text(value), s: bold };
}

/** A text cell that breaks its lines within its own width. */
export function note(value: string): ICellData {
  return { ...text(value), s: { tb: WrapStrategy.WRAP, vt: VerticalAlign.TOP } };
}

/** A number, shown as it is or in the pattern given. */
export function number(value: number, pattern?: Pattern): ICellData {
  return { v: value, t: CellValueType.NUMBER, ...styled(pattern) };
}

/** A formula in English names with commas; it gets its value when the sheet opens. */
export function formula(content: string, pattern?: Pattern): ICellData {
  return { f: content, ...styled(pattern) };
}

/** A formula whose answer stands at the left of its cell, beside the question. */
export function answer(content: string, pattern?: Pattern): ICellData {
  return { f: content, s: { ...patterned(pattern), ht: HorizontalAlign.LEFT } };
}

/** An empty cell that a spilled number will fill, shown in the pattern. */
export function spilled(pattern: Pattern): ICellData {
  return { s: { ...patterned(pattern), ht: HorizontalAlign.LEFT } };
}

function styled(pattern: Pattern | undefined): ICellData {
  return pattern === undefined ? {} : { s: patterned(pattern) };
}

function patterned(pattern: Pattern | undefined): IStyleData {
  return pattern === undefined ? {} : { n: { pattern } };
}
