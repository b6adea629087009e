import { isProblem, type Problem } from "../nouns/problem";
import { type Argument, cellText, oneCell } from "../ranges/option";
import type { PickUnit } from "../ranges/pickAmounts";
import { readChoice } from "../ranges/readChoice";
import { unitOf } from "../ranges/unit";

const UNITS = ["g", "kg", "lb", "oz", "count", "ml", "l", "cm", "m", "in", "ft"] as const;

/** The unit that picks are to be added up in, in any of its spellings; null where none is asked for. */
export function readPickUnit(given: Argument): PickUnit | null | Problem {
  const read = oneCell(given, "unit");
  if (isProblem(read)) return read;
  const spelt = read.cell === null ? null : unitOf(cellText(read.cell).trim());
  return spelt ?? readChoice(given, { argument: "unit", allowed: UNITS, fallback: null });
}
