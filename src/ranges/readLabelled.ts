import { type Cell, isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import { isProblem, type Problem } from "../nouns/problem";
import type { Sample } from "../nouns/sample";
import { cellsOf, filledLength } from "./cellsOf";
import type { Extent } from "./extent";
import { headingOf } from "./headingOf";
import { isAmountLike } from "./isAmountLike";
import { type LabelKind, labelKey } from "./labelKey";
import { plainLabel } from "./plainLabel";
import { type Labels, readLabels } from "./readLabels";
import { type Negatives, readSample } from "./readSample";
import { sameShape } from "./sameShape";
import { trimTogether } from "./trimTogether";

/** A labels range that belongs to amounts. */
export interface LabelsGiven {
  readonly range: CellRange;
  readonly kind: LabelKind;
}

/** Amounts and the labels beside them: `labels[k].entries[i]` belongs to `sample.entries[i]`. */
export interface Labelled {
  readonly sample: Sample;
  /** In the order given; null for an omitted range. */
  readonly labels: readonly (Labels | null)[];
}

/**
 * Reads amounts with the labels that stand beside them: cell i of all ranges belongs together, empty rows that all have
 * at the end aside.
 *
 * The first row is a heading when the amounts' first cell is one, unless the label beside it comes up again further
 * down: "slugs" beside the first of six "Straw" is a note about a plant.
 *
 * @param labels treatment, bed or plant labels; null for an omitted argument
 * @returns a Problem for ranges of different size, for amounts and labels the wrong way round, and readSample's
 */
export function readLabelled(
  amounts: CellRange,
  labels: readonly (LabelsGiven | null)[],
  negatives: Negatives,
): Labelled | Problem {
  const given = labels.filter((one) => one !== null);
  const [trimmed = amounts, ...beside] = trimTogether([amounts, ...given.map(({ range }) => range)]);
  const besides = given.map(({ kind }, at) => ({ kind, range: beside[at] ?? trimmed }));
  const problem = firstProblem(trimmed, besides);
  if (problem !== null) return problem;
  const length = Math.max(filledLength(trimmed), ...beside.map(filledLength));
  const extent: Extent = { length, heading: hasHeadingRow(trimmed, besides) };
  const sample = readSample(trimmed, negatives, extent);
  if (isProblem(sample)) return sample;
  const read = besides.map(({ range, kind }) => readLabels(range, kind, extent));
  return { sample, labels: labels.map((one) => (one === null ? null : (read[given.indexOf(one)] ?? null))) };
}

function firstProblem(amounts: CellRange, labels: readonly LabelsGiven[]): Problem | null {
  for (const { range } of labels) {
    const problem = sameShape(amounts, range) ?? lookSwapped(amounts, range);
    if (problem !== null) return problem;
  }
  return null;
}

/** Amounts that are all names beside labels that are all amounts, first cells aside. */
function lookSwapped(amounts: CellRange, labels: CellRange): Problem | null {
  const names = filledBelowFirst(amounts);
  const numbers = filledBelowFirst(labels);
  if (names.length === 0 || names.some(isAmountLike)) return null;
  if (!numbers.every(isAmountLike) || !numbers.some((cell) => typeof cell === "number")) return null;
  return { problem: "ranges-swapped", first: amounts.argument, second: labels.argument };
}

function filledBelowFirst(range: CellRange): readonly Cell[] {
  return cellsOf(range)
    .slice(1)
    .filter((cell) => !isEmpty(cell));
}

function hasHeadingRow(amounts: CellRange, labels: readonly LabelsGiven[]): boolean {
  if (headingOf(cellsOf(amounts)[0]) === null) return false;
  return !labels.some(({ range, kind }) => firstComesAgain(range, kind));
}

function firstComesAgain(range: CellRange, kind: LabelKind): boolean {
  const [first, ...others] = cellsOf(range).map((cell) => plainLabel(cell));
  if (first === null || first === undefined) return false;
  const key = labelKey(first, kind);
  return others.some((label) => label !== null && labelKey(label, kind) === key);
}
