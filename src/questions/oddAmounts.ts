import { countsFruit } from "../methods/countsFruit";
import { oddPicks } from "../methods/oddPicks";
import { oddValues } from "../methods/oddValues";
import type { OddBecause } from "../nouns/reading";
import { isCountHeading } from "../ranges/isCountHeading";
import type { LookedBlock, LookedColumn } from "../ranges/lookAtBlock";

/** What counts as far from the rest. */
export interface OddRules {
  /** True: every number is one plant's total. Null: found out from the block. */
  readonly perPlant: boolean | null;
  readonly lowest: number | null;
  readonly highest: number | null;
}

/** A number that stands out. */
export interface OddAmount {
  readonly row: number;
  /** Its column within the range, from 0. */
  readonly at: number;
  readonly because: OddBecause;
}

/** A typed amount over a thousand million is a slip. */
const HUGE = 1e9;

type AmountColumn = Extract<LookedColumn, { kind: "amount" }>;

/**
 * Numbers unusually big or small (METHODS 8.11), those below zero or over a thousand million, and those outside what
 * the grower set; counts of fruit beside weights are not held to these limits.
 *
 * A block without dates in which every plant has its own name is one of totals per plant; any other holds picks.
 */
export function oddAmounts(looked: LookedBlock, rules: OddRules): readonly OddAmount[] {
  const amounts = looked.columns.filter((column) => column.kind === "amount");
  const perPlant = rules.perPlant ?? holdsTotals(looked);
  const aside = new Set(looked.aside.map(({ row }) => row));
  return amounts.flatMap((column) => {
    const values = column.values.map((value, row) => (aside.has(row) ? Number.NaN : value));
    const limits = isCount(column, amounts) ? { lowest: null, highest: null } : rules;
    const far = new Set(perPlant ? farTotals(values) : oddPicks(values, countsBeside(column, amounts)));
    return oddRows({ values, far, limits }, column.column.at);
  });
}

interface Judged {
  readonly values: Float64Array;
  readonly far: ReadonlySet<number>;
  readonly limits: Pick<OddRules, "lowest" | "highest">;
}

function oddRows({ values, far, limits }: Judged, at: number): readonly OddAmount[] {
  const odd: OddAmount[] = [];
  for (let row = 0; row < values.length; row++) {
    const because = oddBecause(values[row] ?? Number.NaN, limits) ?? (far.has(row) ? "far" : null);
    if (because !== null) odd.push({ row, at, because });
  }
  return odd;
}

function oddBecause(value: number, { lowest, highest }: Pick<OddRules, "lowest" | "highest">): OddBecause | null {
  if (value < 0 && (lowest === null || value < lowest)) return "below-zero";
  if (value > HUGE) return "huge";
  return (lowest !== null && value < lowest) || (highest !== null && value > highest) ? "beyond-limits" : null;
}

function farTotals(values: Float64Array): readonly number[] {
  const rows = [...values.keys()].filter((row) => !Number.isNaN(values[row]));
  return oddValues(rows.map((row) => values[row] ?? Number.NaN)).flatMap((at) => rows[at] ?? []);
}

function holdsTotals({ columns }: LookedBlock): boolean {
  if (columns.some(({ kind }) => kind === "date")) return false;
  return columns.some((column) => column.kind === "label" && allDifferent(column.keys));
}

function allDifferent(keys: readonly (string | null)[]): boolean {
  const given = keys.filter((key) => key !== null);
  return given.length > 1 && new Set(given).size === given.length;
}

function isCount(column: AmountColumn, amounts: readonly AmountColumn[]): boolean {
  return amounts.some((other) => other !== column && counts(column, other));
}

/** The nearest column that counts this one's fruit, those before it first. */
function countsBeside(column: AmountColumn, amounts: readonly AmountColumn[]): Float64Array | null {
  const here = amounts.indexOf(column);
  const nearest = [...amounts.slice(0, here).reverse(), ...amounts.slice(here + 1)];
  return nearest.find((other) => counts(other, column))?.values ?? null;
}

/** One column counts the fruit of another: its heading says so and the other's does not, or the numbers tell. */
function counts(one: AmountColumn, other: AmountColumn): boolean {
  if (isCountHeading(other.column.heading)) return false;
  return isCountHeading(one.column.heading) || countsFruit(one.values, other.values);
}
