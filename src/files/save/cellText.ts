import type { Cell } from "../../nouns/cell";
import { isErrorCell } from "../../nouns/cell";
import { escaped } from "../xml/xml";

/** One cell to be written. */
export interface CellToWrite {
  readonly address: string;
  /** Number of its style. */
  readonly style: number;
  readonly value: Cell;
  /** The finished `<f>`, "" for a plain value. */
  readonly formula: string;
  /** The cell's number of metadata, where it has one. */
  readonly mark?: number;
}

/**
 * A cell as a sheet's part has it. Texts stand in the cell itself, so that the workbook's list of texts stays as it is.
 *
 * @param prefix of the part's tags: "" or "x:"
 * @returns "" of a cell that holds nothing and looks like any other
 */
export function cellText({ address, style, value, formula, mark }: CellToWrite, prefix: string): string {
  if (value === null && formula === "" && style === 0) return "";
  const [kind, content] = contents(value, formula, prefix);
  const attributes =
    ` r="${address}"` +
    (style === 0 ? "" : ` s="${style}"`) +
    (kind === "" ? "" : ` t="${kind}"`) +
    (mark === undefined ? "" : ` cm="${mark}"`);
  const inner = formula + content;
  return inner === "" ? `<${prefix}c${attributes}/>` : `<${prefix}c${attributes}>${inner}</${prefix}c>`;
}

/** The kind of a value, and its tag. */
function contents(value: Cell, formula: string, prefix: string): [string, string] {
  const plain = (text: string) => `<${prefix}v>${text}</${prefix}v>`;
  if (value === null) return ["", ""];
  if (typeof value === "number") return ["", plain(String(value))];
  if (typeof value === "boolean") return ["b", plain(value ? "1" : "0")];
  if (isErrorCell(value)) return ["e", plain(escaped(value.error))];
  if (formula !== "") return ["str", plain(escaped(value))];
  return ["inlineStr", `<${prefix}is><${prefix}t xml:space="preserve">${lettered(value)}</${prefix}t></${prefix}is>`];
}

/** A text that looks like one of Excel's marks for a letter (`_x000D_`) is marked, so that it stays a text. */
function lettered(text: string): string {
  return escaped(text).replaceAll(/_(?=x[\da-fA-F]{4}_)/g, "_x005F_");
}
