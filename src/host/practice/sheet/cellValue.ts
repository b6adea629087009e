import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { ERROR_TYPE_SET } from "@univerjs/engine-formula";
import type { Cell } from "../../../nouns/cell";

const errors: ReadonlySet<string> = ERROR_TYPE_SET;

/** What a cell of the grid's own form holds. */
export function cellValue(cell: Nullable<ICellData>): Cell {
  const value = cell?.v ?? richText(cell);
  if (value === null || value === "") return null;
  if (cell?.t === CellValueType.BOOLEAN) return Boolean(value);
  return typeof value === "string" && errors.has(value) ? { error: value } : value;
}

/** A text typed on several lines ends with marks of the document model that no cell shows. */
function richText(cell: Nullable<ICellData>): string | null {
  const stream = cell?.p?.body?.dataStream;
  return stream === undefined ? null : stream.replace(/\r\n\0?$/, "").replaceAll("\r", "\n");
}
