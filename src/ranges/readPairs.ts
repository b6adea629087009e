import { isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import { isProblem, type Problem, type Shape } from "../nouns/problem";
import type { Sample } from "../nouns/sample";
import { cellsOf, filledLength, widthOf } from "./cellsOf";
import { headingOf } from "./headingOf";
import { type Negatives, readSample } from "./readSample";
import { sameShape, shapeOf } from "./sameShape";
import { trimTogether } from "./trimTogether";

/** Two samples whose entries belong together, index by index. */
export interface Pairs {
  readonly usual: Sample;
  readonly tried: Sample;
}

/**
 * Reads two ranges in which cell i of both belongs together (one bed, one pair). Both samples have as many entries;
 * a cell that is empty in one of them stays as "not recorded".
 *
 * Headings: the first row is one when both first cells are headings, or one is and the other is empty. When just one
 * is, it may be a note about the first plant ("slugs") or one range may start a row too late. Ranges that start side by
 * side on the sheet are read as a note: that pair is incomplete. Otherwise shapes-differ counts the rows without the
 * heading, as nothing tells which plants belong together.
 *
 * @returns a Problem for ranges of different size (empty rows at the end aside), and readSample's
 */
export function readPairs(usual: CellRange, tried: CellRange, negatives: Negatives): Pairs | Problem {
  const [first = usual, second = tried] = trimTogether([usual, tried]);
  const heading = sharedHeading(first, second);
  const differ = sameShape(first, second) ?? (heading === "one" ? rowsDiffer(first, second) : null);
  if (differ !== null) return differ;
  const extent = { length: Math.max(filledLength(first), filledLength(second)), heading: heading === "both" };
  const samples = [readSample(first, negatives, extent), readSample(second, negatives, extent)] as const;
  if (isProblem(samples[0])) return samples[0];
  return isProblem(samples[1]) ? samples[1] : { usual: samples[0], tried: samples[1] };
}

/** Whether the first cells are headings: of both, of neither, or of one that does not stand beside the other. */
function sharedHeading(first: CellRange, second: CellRange): "both" | "neither" | "one" {
  const cells = [first, second].map((range) => cellsOf(range)[0] ?? null);
  const headings = cells.filter((cell) => headingOf(cell) !== null).length;
  const empties = cells.filter(isEmpty).length;
  if (headings === 2 || (headings === 1 && empties === 1)) return "both";
  return headings === 0 || startSideBySide(first, second) ? "neither" : "one";
}

/** Columns that start in one row, or rows that start in one column, of the same sheet. */
function startSideBySide(first: CellRange, second: CellRange): boolean {
  const [one, other] = [first.corner, second.corner];
  if (one === null || other === null || one.sheet !== other.sheet) return false;
  return first.cells.length === 1 && widthOf(first) > 1 ? one.column === other.column : one.row === other.row;
}

/** The ranges' sizes with the heading's row taken off the range that has one. */
function rowsDiffer(first: CellRange, second: CellRange): Problem {
  return { problem: "shapes-differ", first: withoutHeading(first), second: withoutHeading(second) };
}

function withoutHeading(range: CellRange): Shape {
  const { argument, rows, columns } = shapeOf(range);
  if (headingOf(cellsOf(range)[0]) === null) return { argument, rows, columns };
  return rows === 1 ? { argument, rows, columns: columns - 1 } : { argument, rows: rows - 1, columns };
}
