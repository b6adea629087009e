import type { CellRange } from "../nouns/cellRange";
import type { Problem, Shape } from "../nouns/problem";
import { widthOf } from "./cellsOf";

/** Null when both ranges have as many rows and columns, else the Problem that names both sizes. Trim them first. */
export function sameShape(first: CellRange, second: CellRange): Problem | null {
  const shapes = [shapeOf(first), shapeOf(second)] as const;
  const alike = shapes[0].rows === shapes[1].rows && shapes[0].columns === shapes[1].columns;
  return alike ? null : { problem: "shapes-differ", first: shapes[0], second: shapes[1] };
}

/** A range's size. */
export function shapeOf(range: CellRange): Shape {
  return { argument: range.argument, rows: range.cells.length, columns: widthOf(range) };
}
