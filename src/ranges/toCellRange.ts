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
  if (!Array.isArray(raw)) return [[readCell(raw)]];
  const rows: unknown[][] = raw.some(Array.isArray) ? raw.map(asRow) : [raw];
  const width = rows.reduce((widest, row) => Math.max(widest, row.length), 1);
  if (rows.length === 0) return [[null]];
  return rows.map((row) => (row.length === width ? readRow(row) : filledUp(row, width)));
}

/** A row of plain values is taken as it is: most are, and a long column has a hundred thousand. */
function readRow(row: readonly unknown[]): readonly Cell[] {
  const isPlain = row.every((value) => Object.is(readCell(value), value));
  return isPlain ? (row as readonly Cell[]) : row.map(readCell);
}

function filledUp(row: readonly unknown[], width: number): Cell[] {
  return Array.from({ length: width }, (_, at) => readCell(row[at]));
}

function asRow(row: unknown): unknown[] {
  return Array.isArray(row) ? row : [row];
}
