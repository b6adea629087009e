import type { Caution } from "../nouns/caution";
import type { CellRange } from "../nouns/cellRange";
import type { Problem } from "../nouns/problem";
import { type Argument, missing } from "../ranges/option";
import { readLabels } from "../ranges/readLabels";
import { readWhole } from "../ranges/readWhole";

/** How many plants were set out. */
export interface Planted {
  readonly plants: number;
  /** True when a plant's label stands more than once in the range given. */
  readonly repeated: boolean;
}

/**
 * The plants set out: a whole number, or a range of plant labels, of which the different ones count.
 *
 * @param heading whether the range's first cell is a heading, which a label alone does not tell
 */
export function readPlanted(given: Argument, heading: boolean): Planted | null | Problem {
  if (given === null || given === undefined) return null;
  if (given.cells.length === 1 && given.cells[0]?.length === 1) return typedNumber(given);
  const { names, entries } = readLabels(given, "plant", { heading });
  const labelled = entries.filter((label) => label !== null).length;
  return names.length === 0 ? missing(given.argument) : { plants: names.length, repeated: labelled > names.length };
}

/** One cell holds the number; one label alone is more likely a number in words than a list of one plant. */
function typedNumber(given: CellRange): Planted | null | Problem {
  const plants = readWhole(given, { argument: given.argument, low: 1, high: null, fallback: null });
  if (typeof plants === "number") return { plants, repeated: false };
  return plants?.problem === "not-a-number" ? { problem: "planted-unclear", given: plants.given } : plants;
}

/** C02: some plants are in the list of plants more than once. */
export function repeatedLabels(planted: Planted | null): readonly Caution[] {
  return planted?.repeated === true ? [{ caution: "C02" }] : [];
}
