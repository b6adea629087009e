import { isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Problem } from "../nouns/problem";
import { widthOf } from "../ranges/cellsOf";
import { cellText } from "../ranges/cellText";
import { labelKey } from "../ranges/labelKey";
import type { Argument } from "../ranges/option";
import { placeOf } from "../ranges/placeOf";
import { plainLabel } from "../ranges/plainLabel";
import { readWhole } from "../ranges/readWhole";
import { errorForName } from "./errorForName";

/** How many plants of each treatment were set out. */
export interface PlantsSetOut {
  /** The number of a treatment's plants; null where none is named. */
  readonly of: (treatment: string) => number | null;
  /** The treatments that are named, as spelt there. */
  readonly names: readonly string[];
}

const RULE = { argument: "plants_each", low: 1, high: null, fallback: null } as const;

/** The plants set out of each treatment: one number for all, or two columns of names and numbers; null when omitted. */
export function readPlantsEachNamed(given: Argument): PlantsSetOut | null | Problem {
  if (!given) return null;
  const columns = widthOf(given);
  if (columns < 2) return oneForAll(given);
  if (columns > 2) return { problem: "too-many-columns", argument: RULE.argument, columns, most: 2 };
  return errorForName(given, columns) ?? numberWithoutName(given) ?? oneForEach(given);
}

/** A word in the first row may be a heading above the numbers alone. */
function numberWithoutName(given: CellRange): Problem | null {
  const row = given.cells.findIndex(
    ([name = null, number = null], at) => isEmpty(name) && !isEmpty(number) && (at > 0 || typeof number === "number"),
  );
  if (row < 0) return null;
  const number = given.cells[row]?.[1] ?? null;
  return { problem: "number-without-name", place: placeOf(given, 2 * row + 1), given: cellText(number) };
}

/** A word in place of the first number makes its row a heading. */
function oneForEach(given: CellRange): PlantsSetOut | Problem {
  const rows = given.cells.flatMap(([name = null, number = null]) => {
    const label = plainLabel(name);
    return label === null ? [] : [{ label, plants: readNumber({ ...given, cells: [[number]] }, label) }];
  });
  const [first] = rows;
  const named = first !== undefined && isHeading(first.plants) ? rows.slice(1) : rows;
  const counts = new Map<string, number>();
  for (const { label, plants } of named) {
    if (typeof plants === "object") return plants;
    if (counts.has(labelKey(label, "name"))) return { problem: "name-twice", name: label };
    counts.set(labelKey(label, "name"), plants);
  }
  const of = (treatment: string): number | null => counts.get(labelKey(treatment, "name")) ?? null;
  return { of, names: named.map(({ label }) => label) };
}

function readNumber(cell: CellRange, label: string): number | Problem {
  return readWhole(cell, { ...RULE, fallback: { problem: "plants-each-lacks", name: label } as const });
}

/** A word where the number stands: "plants". */
function isHeading(plants: number | Problem): boolean {
  return typeof plants === "object" && plants.problem === "not-a-number";
}

function oneForAll(given: CellRange): PlantsSetOut | null | Problem {
  const plants = readWhole(given, RULE);
  return typeof plants === "object" ? plants : { of: () => plants, names: [] };
}
