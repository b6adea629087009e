import type { Cell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import { parseAddress } from "./parseAddress";
import { readCell } from "./readCell";

/** Where an argument stands, as far as the host tells. */
export interface Origin {
  /** "Sheet1!B2:C9"; null, missing or unreadable: not known. */
  readonly address?: string | null | undefined;
  /** False when an empty cell may have arrived as 0. */
  readonly zerosVerified: boolean;
}

/**
 * One argument of a call as the host hands it over, made into a block of cells.
 *
 * @param argument the argument's name as the grower sees it
 * @param raw a matrix, one row, or a single value; short rows are filled up with empty cells, an empty matrix is
 *   one empty cell
 */
export function toCellRange(argument: string, raw: unknown, { address, zerosVerified }: Origin): CellRange {
  return { argument, cells: readMatrix(raw), corner: parseAddress(address), zerosVerified };
}

function readMatrix(raw: unknown): readonly (readonly Cell[])[] {
  return Array.isArray(raw) ? readRows(raw) : [[readCell(raw)]];
}

function readRows(raw: readonly unknown[]): readonly (readonly Cell[])[] {
  if (isPlainBlock(raw)) return raw;
  const rows = raw.some(Array.isArray) ? raw.map(asRow) : [raw];
  const width = rows.reduce((widest, row) => Math.max(widest, row.length), 1);
  return rows.map((row) => filledUp(row, width));
}

/**
 * Whether the host's matrix is a block of cells as it stands. Most are, and a long log has a hundred thousand rows: they
 * are looked at one by one, not copied.
 */
function isPlainBlock(raw: readonly unknown[]): raw is readonly (readonly Cell[])[] {
  const [first] = raw;
  if (!Array.isArray(first) || first.length === 0) return false;
  const width = first.length;
  for (let at = 0; at < raw.length; at++) {
    const row: unknown = raw[at];
    if (!Array.isArray(row) || row.length !== width) return false;
    for (let across = 0; across < width; across++) if (!isPlainCell(row[across])) return false;
  }
  return true;
}

/** Whether `readCell` would give the value back as it is. */
function isPlainCell(value: unknown): boolean {
  return Object.is(readCell(value), value);
}

function filledUp(row: readonly unknown[], width: number): Cell[] {
  return Array.from({ length: width }, (_, at) => readCell(row[at]));
}

function asRow(row: unknown): unknown[] {
  return Array.isArray(row) ? row : [row];
}
