import type { Cell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Problem } from "../nouns/problem";
import { cellsOf, widthOf } from "./cellsOf";
import { type LabelKind, labelKey } from "./labelKey";
import { plainLabel } from "./plainLabel";
import { type Labels, readLabels } from "./readLabels";

/** A plant that was set out, with the treatment and bed listed for it; null where none is. */
export interface ListedPlant {
  readonly plant: string;
  readonly treatment: string | null;
  readonly bed: string | null;
}

/** The list of all plants set out. */
export interface AllPlants {
  /** Each once, in order of the list. */
  readonly plants: readonly ListedPlant[];
  readonly withTreatments: boolean;
  /** True when a plant stands in the list more than once. */
  readonly repeated: boolean;
}

/** The headings above a log's plants and labels, by which the list's own heading row is known. */
export interface LogHeadings {
  readonly plants: string | null;
  /** The plants of the log, as `labelKey` has them. */
  readonly keys: ReadonlySet<string>;
}

const MOST_COLUMNS = 3;

const HEADING_WORDS = new Set(["plant", "plants", "label", "plant label", "name", "unit", "bag", "id", "all plants"]);

/** Reads *all_plants*: one to three columns, plant, treatment and bed, with or without a heading row. */
export function readAllPlants(range: CellRange, headings: LogHeadings): AllPlants | Problem {
  const columns = widthOf(range);
  if (columns > MOST_COLUMNS)
    return { problem: "too-many-columns", argument: range.argument, columns, most: MOST_COLUMNS };
  const heading = hasHeading(cellsOf(columnOf(range, 0)), headings);
  const labelsIn = (column: number, kind: LabelKind): Labels["entries"] =>
    readLabels(columnOf(range, column), kind, { heading }).entries;
  const [plants, treatments, beds] = [labelsIn(0, "plant"), labelsIn(1, "name"), labelsIn(2, "name")];
  const listed = new Map<string, ListedPlant>();
  let rows = 0;
  for (const [at, plant] of plants.entries()) {
    if (plant === null) continue;
    rows++;
    if (!listed.has(plant)) listed.set(plant, { plant, treatment: treatments[at] ?? null, bed: beds[at] ?? null });
  }
  return { plants: [...listed.values()], withTreatments: columns > 1, repeated: rows > listed.size };
}

/** A column of the list; empty cells where it has no such column. */
function columnOf(range: CellRange, column: number): CellRange {
  return { ...range, cells: range.cells.map((row) => [row[column] ?? null]), corner: null };
}

/** A first label that is the log's own heading, a usual heading, or unlike all others without a digit, and is no plant of the log. */
function hasHeading(cells: readonly Cell[], { plants, keys }: LogHeadings): boolean {
  const labels = cells.map(plainLabel).filter((label) => label !== null);
  const [first, ...others] = labels.map((label) => labelKey(label, "plant"));
  if (first === undefined || keys.has(first) || others.includes(first)) return false;
  if (HEADING_WORDS.has(first) || (plants !== null && labelKey(plants, "plant") === first)) return true;
  return others.length > 0 && !/\d/.test(first) && others.every((label) => /\d/.test(label));
}
