import { SSF } from "@e965/xlsx";
import { type Cell, isErrorCell } from "../../nouns/cell";
import type { Book, BookSheet } from "../book";
import { effectiveCells } from "../save/effectiveCells";

/** Excel's dates: from 1 January 1900 to the end of 9999. A part of a day alone is a time. */
const dates = { first: 1, end: 2_958_466 } as const;

/**
 * A sheet as a table of text: commas, points in numbers, UTF-8 with the mark by which Excel knows it. Results stand
 * in place of formulas, dates as 2026-05-03, times as 14:31:00. A text that a spreadsheet would take for a formula is
 * guarded with an apostrophe.
 */
export function writeCsv(sheet: BookSheet, looks: Book["looks"]): Uint8Array<ArrayBuffer> {
  const cells = effectiveCells(sheet);
  const lines = Array.from({ length: lengthOf(cells.keys()) }, (_, row) => {
    const ofRow = cells.get(row);
    return Array.from({ length: lengthOf(ofRow?.keys() ?? []) }, (__, column) => {
      const cell = ofRow?.get(column);
      return fieldOf(cell?.value ?? null, looks[cell?.look ?? 0]?.pattern);
    }).join(",");
  });
  return new TextEncoder().encode(`\uFEFF${lines.map((line) => `${line}\r\n`).join("")}`);
}

/** One more than the largest place; places count from 0. */
function lengthOf(places: Iterable<number>): number {
  let length = 0;
  for (const place of places) length = Math.max(length, place + 1);
  return length;
}

function fieldOf(value: Cell, pattern = "General"): string {
  if (value === null) return "";
  if (typeof value === "number") return SSF.is_date(pattern) ? dated(value) : String(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return quoted(isErrorCell(value) ? value.error : guarded(value));
}

/** A number that is no day, though its cell shows dates, stays a number. */
function dated(value: number): string {
  if (value < 0 || value >= dates.end) return String(value);
  if (value < dates.first) return SSF.format("hh:mm:ss", value);
  return SSF.format(Number.isInteger(value) ? "yyyy-mm-dd" : "yyyy-mm-dd hh:mm:ss", value);
}

/** A sign alone ("-" for none) is no formula. */
function guarded(text: string): string {
  return /^'*[=+\-@\t\r][\s\S]/.test(text) ? `'${text}` : text;
}

/** A text that reads as a number or a day stands in quotes, so that it stays a text. */
function quoted(text: string): string {
  const plain = !/[",;\t\r\n]|^\s|\s$/.test(text) && !/^[-+]?\d/.test(text);
  return plain ? text : `"${text.replaceAll('"', '""')}"`;
}
