import { type Cell, isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Problem } from "../nouns/problem";
import { widthOf } from "./cellsOf";

/** An optional argument as the call hands it over: null or missing when omitted. */
export type Argument = CellRange | null | undefined;

/** The fallback of an argument that must be given. */
export function missing(argument: string): Problem {
  return { problem: "missing-argument", argument };
}

/** The one cell of an option; a null cell when it is omitted or empty. A block of several cells is a Problem. */
export function oneCell(given: Argument, argument: string): { readonly cell: Cell } | Problem {
  if (!given) return { cell: null };
  const [rows, columns] = [given.cells.length, widthOf(given)];
  if (rows > 1 || columns > 1) return { problem: "one-cell-wanted", argument, rows, columns };
  const cell = given.cells[0]?.[0] ?? null;
  return { cell: isEmpty(cell) ? null : cell };
}
