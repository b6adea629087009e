import type { CellRange } from "../nouns/cellRange";
import { isProblem, type Problem } from "../nouns/problem";
import type { Sample } from "../nouns/sample";
import { columnEntries } from "./columnEntries";
import type { Extent } from "./extent";
import { placeOf } from "./placeOf";
import { type Column, readColumn } from "./readColumn";
import { totalAtEnd } from "./totalAtEnd";
import { whereIs } from "./whereIs";

/** What to do about amounts below zero: a harvest cannot be, any other measurement may. */
export type Negatives = "refuse" | "keep";

/**
 * Reads an amounts range of any shape, row by row (METHODS 4.1 and 4.6; headings: section 8; units: `settleUnits`).
 *
 * Every cell becomes an entry: a value, a lost plant, or one not recorded. A heading, and empty cells after the last
 * filled one, become none. An empty range gives a sample without entries.
 *
 * @param negatives what to do about a number below zero
 * @param extent how much to read where other ranges or the caller decide it
 * @returns a Problem for a number below zero (with "refuse"), and for a range that ends with its own total or average
 */
export function readSample(range: CellRange, negatives: Negatives, extent: Extent = {}): Sample | Problem {
  const column = readColumn(range, extent);
  const below = negatives === "refuse" ? column.numbers.find(({ value }) => value < 0) : undefined;
  if (below) return { problem: "negative-amount", place: placeOf(range, below.index), given: below.value };
  const end = endOf(range, column);
  if (isProblem(end)) return end;
  return {
    argument: range.argument,
    name: column.name,
    where: whereIs(range),
    unit: column.unit,
    entries: columnEntries(range, column),
    zerosUnverified: range.zerosVerified ? 0 : column.numbers.filter(isZeroCell).length,
    averageAtEnd: end.averageAtEnd,
  };
}

/** Refuses a total or an average row; one that only may be an average is noted. */
function endOf(range: CellRange, column: Column): Pick<Sample, "averageAtEnd"> | Problem {
  const end = totalAtEnd(column.numbers);
  if (end === null) return { averageAtEnd: null };
  const place = placeOf(range, end.index);
  if (end.row === "equals-average") return { averageAtEnd: place };
  const problem = end.row === "total" ? "total-at-end" : "average-at-end";
  return { problem, place, endBefore: placeOf(range, end.index - 1) };
}

function isZeroCell({ value, numberCell }: Column["numbers"][number]): boolean {
  return numberCell && value === 0;
}
