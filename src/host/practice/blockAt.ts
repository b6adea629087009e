import type { IRange } from "@univerjs/core";
import { deserializeRangeWithSheet } from "@univerjs/engine-formula";

/** The block of cells at an address without a sheet ("A11:E13"), in the grid's own form: rows and columns from 0. */
export function blockAt(address: string): IRange {
  const { startRow, startColumn, endRow, endColumn } = deserializeRangeWithSheet(address).range;
  return { startRow, startColumn, endRow, endColumn };
}
