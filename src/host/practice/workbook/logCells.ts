import type { ICellData } from "@univerjs/core";
import { heading, number, text } from "./cells";
import { type LogRow, logHeadings } from "./cleanLog";

/** A pick log's cells from A1 on, headings above. */
export function logCells(rows: readonly LogRow[]): Record<string, ICellData> {
  const heads = logHeadings.map((head, column) => [`${"ABCDEFG"[column]}1`, heading(head)] as const);
  const cells = rows.flatMap((row, down) =>
    row.flatMap((value, column) => {
      if (value === null) return [];
      const cell = typeof value === "number" ? number(value) : text(value);
      return [[`${"ABCDEFG"[column]}${down + 2}`, cell] as const];
    }),
  );
  return Object.fromEntries([...heads, ...cells]);
}
