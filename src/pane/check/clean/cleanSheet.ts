import { type NewCell, type NewSheet, type PlacedCells, textCell } from "../../../host/newSheet";
import { addressOf } from "../../address";
import type { Change } from "./change";
import type { CleanTable } from "./cleanTable";

/** Widths of columns in pixels: of the tables, of the gaps between them, and of the list's. */
const widths = { table: 108, gap: 24, list: [150, 150, 150, 520] } as const;

type Rows = readonly (readonly (NewCell | null)[])[];

/**
 * The sheet of a clean copy: the table from A1 on, headings above; a row per plant beside it, where there is one; and
 * beside those the list of what was changed or left in doubt.
 */
export function cleanSheet(table: CleanTable, plants: Rows | null): NewSheet {
  const headings = table.columns.map(({ heading }) => textCell(heading, { bold: true }));
  const parts: readonly Rows[] = [
    [headings, ...table.rows],
    ...(plants === null ? [] : [plants]),
    changeRows(table.changes),
  ];
  const blocks: PlacedCells[] = [];
  const columns: number[] = [];
  for (const rows of parts) {
    if (columns.length > 0) columns.push(widths.gap);
    blocks.push({ address: addressOf({ row: 1, column: columns.length + 1 }), rows });
    columns.push(...(rows[0] ?? []).map(() => widths.table));
  }
  const list = columns.length - widths.list.length;
  return { name: "Clean copy", blocks, widths: [...columns.slice(0, list), ...widths.list] };
}

function changeRows(changes: readonly Change[]): Rows {
  const header = ["Cell", "Was", "Became", "Why, or what to do"].map((text) => textCell(text, { bold: true }));
  const rows = changes.map(({ where, was, became, why }) => [where, was, became, why].map((text) => textCell(text)));
  return [header, ...(rows.length === 0 ? [[textCell("Nothing was changed."), null, null, null]] : rows)];
}
