import { SSF } from "@e965/xlsx";
import { type Cell, isErrorCell } from "../../nouns/cell";
import type { Book, BookSheet } from "../book";
import { effectiveCells } from "../save/effectiveCells";

/**
 * A sheet as a table of text: commas, points in numbers, UTF-8 with the mark by which Excel knows it. Results stand
 * in place of formulas, dates as 2026-05-03. A text that a spreadsheet would take for a formula is guarded with an
 * apostrophe.
 */
export function writeCsv(sheet: BookSheet, looks: Book["looks"]): Uint8Array<ArrayBuffer> {
  const cells = effectiveCells(sheet);
  const height = Math.max(-1, ...cells.keys()) + 1;
  const lines = Array.from({ length: height }, (_, row) => {
    const ofRow = cells.get(row);
    const width = Math.max(-1, ...(ofRow?.keys() ?? [])) + 1;
    return Array.from({ length: width }, (__, column) => {
      const cell = ofRow?.get(column);
      return fieldOf(cell?.value ?? null, looks[cell?.look ?? 0]?.pattern);
    }).join(",");
  });
  return new TextEncoder().encode(`\uFEFF${lines.map((line) => `${line}\r\n`).join("")}`);
}

function fieldOf(value: Cell, pattern = "General"): string {
  if (value === null) return "";
  if (typeof value === "number") return SSF.is_date(pattern) ? SSF.format(dayPattern(value), value) : String(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return quoted(isErrorCell(value) ? value.error : guarded(value));
}

function dayPattern(value: number): string {
  return Number.isInteger(value) ? "yyyy-mm-dd" : "yyyy-mm-dd hh:mm:ss";
}

function guarded(text: string): string {
  return /^'?[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}

/** A text that reads as a number or a day stands in quotes, so that it stays a text. */
function quoted(text: string): string {
  const plain = !/[",;\t\r\n]|^\s|\s$/.test(text) && !/^[-+]?\d/.test(text);
  return plain ? text : `"${text.replaceAll('"', '""')}"`;
}
