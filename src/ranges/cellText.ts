import { type Cell, isErrorCell } from "../nouns/cell";

/** A cell's content as text, as the sheet shows it without number formats; "" for an empty cell. */
export function cellText(cell: Cell): string {
  if (cell === null) return "";
  if (isErrorCell(cell)) return cell.error;
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
}
