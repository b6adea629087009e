import type { Cell } from "../../src/nouns/cell";
import type { CellRange } from "../../src/nouns/cellRange";
import type { Problem } from "../../src/nouns/problem";
import { isProblem } from "../../src/nouns/problem";
import { readSample } from "../../src/ranges/readSample";

/** A column of cells that stands in column B from row 2 on, zeros verified; a single value is a block of one cell. */
export function range(argument: string, cells: Cell | readonly Cell[]): CellRange {
  const column = Array.isArray(cells) ? cells : [cells as Cell];
  const corner = { sheet: "Trial", row: 2, column: 2 };
  return { argument, cells: column.map((cell) => [cell]), corner, zerosVerified: true };
}

/** Arguments by name, each a column or a single value. */
export function given(named: Readonly<Record<string, Cell | readonly Cell[]>>): Readonly<Record<string, CellRange>> {
  return Object.fromEntries(Object.entries(named).map(([name, cells]) => [name, range(name, cells)]));
}

/** What was found, where a problem would be a mistake of the test. */
export function found<Found extends object>(answer: Found | Problem): Found {
  if (isProblem(answer)) throw new Error(`refused: ${answer.problem}`);
  return answer as Found;
}

/** A column as read. */
export function sample(argument: string, cells: readonly Cell[]) {
  return found(readSample(range(argument, cells), "keep"));
}

/** Codes of cautions, in their order. */
export function codes(cautions: readonly { readonly caution: string }[]): readonly string[] {
  return cautions.map(({ caution }) => caution);
}
