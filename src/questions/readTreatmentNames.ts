import { type Cell, isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Problem } from "../nouns/problem";
import { cellsOf } from "../ranges/cellsOf";
import { labelKey } from "../ranges/labelKey";
import { type Argument, missing } from "../ranges/option";
import { plainLabel } from "../ranges/plainLabel";
import { bareNumber } from "../ranges/readNumber";
import { readWhole } from "../ranges/readWhole";
import { errorForName } from "./errorForName";

const LEAST = 2;
/** More cannot be compared at once. */
const MOST = 20;

/** The treatments of a plan: their names in a range, or how many there are, called A, B, C … then. */
export function readTreatmentNames(given: Argument): readonly string[] | Problem {
  if (!given) return missing("treatments");
  const cells = cellsOf(given);
  const [only = null] = cells;
  return cells.length === 1 && isCount(only) ? countedNames(given) : namesIn(given, cells);
}

/** A typed number; a lone name is told by its letters. */
function isCount(cell: Cell): boolean {
  return typeof cell === "number" || (typeof cell === "string" && bareNumber(cell) !== null);
}

function countedNames(given: CellRange): readonly string[] | Problem {
  const rule = { argument: "treatments", low: LEAST, high: MOST, fallback: missing("treatments") };
  const count = readWhole(given, rule);
  return typeof count === "number" ? Array.from({ length: count }, (_, at) => String.fromCharCode(65 + at)) : count;
}

function namesIn(given: CellRange, cells: readonly Cell[]): readonly string[] | Problem {
  const broken = errorForName(given, 1);
  if (broken !== null) return broken;
  if (cells.every(isEmpty)) return missing("treatments");
  const names = cells.flatMap((cell) => plainLabel(cell) ?? []);
  return refusedNames(names) ?? names;
}

function refusedNames(names: readonly string[]): Problem | null {
  const keys = names.map((name) => labelKey(name, "name"));
  const twice = names.find((_, at) => keys.indexOf(keys[at] ?? "") < at);
  if (twice !== undefined) return { problem: "name-twice", name: twice };
  if (names.length < LEAST) return { problem: "too-few-treatments", names };
  return names.length > MOST ? { problem: "too-many-treatments", count: names.length, most: MOST } : null;
}
