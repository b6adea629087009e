import fc from "fast-check";
import type { Cell } from "../../src/nouns/cell";
import type { ReadingKind } from "../../src/nouns/reading";
import { seeded } from "../seeded";

/** A row of a pick log: date, plant, mulch, fruit, grams. */
export type LogRow = readonly Cell[];

/** A nuisance of METHODS 3 that is to be listed, at one row: what the row becomes, and which cell is listed as what. */
export interface Nuisance {
  readonly rows: (row: LogRow) => readonly LogRow[];
  /** Of the rows made of the one, the one that is listed, and its column. */
  readonly listed: readonly [row: number, column: number];
  readonly kind: ReadingKind;
}

const [DATE, PLANT, MULCH, FRUIT, GRAMS] = [0, 1, 2, 3, 4];

function typed(column: number, kind: ReadingKind, make: (cell: Cell) => Cell): Nuisance {
  return { rows: (row) => [row.map((cell, at) => (at === column ? make(cell) : cell))], listed: [0, column], kind };
}

function inserted(row: LogRow, column: number, kind: ReadingKind): Nuisance {
  return { rows: (before) => [before, row], listed: [1, column], kind };
}

/** Every nuisance of METHODS 3 that the page says is reported, listed or left out. */
export const nuisances: Readonly<Record<string, Nuisance>> = {
  "kilograms typed": typed(GRAMS, "unit-converted", (cell) => `${Number(cell) / 1000}kg`),
  "grams typed": typed(GRAMS, "unit-converted", (cell) => `${String(cell)} g`),
  "pounds and ounces": typed(GRAMS, "unit-converted", () => "0 lb 8 oz"),
  "decimal comma": typed(GRAMS, "unit-converted", (cell) => `${(Number(cell) / 1000).toFixed(3).replace(".", ",")} kg`),
  "mark after": typed(GRAMS, "mark-removed", (cell) => `${String(cell)}*`),
  "word before": typed(GRAMS, "mark-removed", (cell) => `approx ${String(cell)}`),
  wave: typed(FRUIT, "mark-removed", (cell) => `~${String(cell)}`),
  "question mark": typed(FRUIT, "mark-removed", (cell) => `${String(cell)}?`),
  sum: typed(FRUIT, "mark-removed", () => "1+1"),
  "a point with three digits": typed(GRAMS, "mark-removed", () => "1.250"),
  "count and note": typed(FRUIT, "unreadable", () => "2 (1 split)"),
  slash: typed(FRUIT, "unreadable", () => "3/2"),
  "count and weight": typed(GRAMS, "unreadable", (cell) => `2 (${String(cell)}g)`),
  "doubtful thousands": typed(GRAMS, "unreadable", () => "1,250"),
  "another note": typed(GRAMS, "unreadable", () => "slugs"),
  percent: typed(GRAMS, "unreadable", () => "15%"),
  forgot: typed(GRAMS, "not-recorded", () => "forgot"),
  "weight missing": typed(GRAMS, "not-recorded", () => null),
  lost: typed(GRAMS, "lost", () => "dead"),
  none: typed(GRAMS, "none-as-zero", () => "-"),
  zero: typed(FRUIT, "zero", () => 0),
  "error value": typed(GRAMS, "error", () => ({ error: "#N/A" })),
  "date made of an amount": typed(GRAMS, "excel-date", () => 45_112),
  "extra zero": typed(GRAMS, "odd-size", (cell) => 10 * Number(cell)),
  "slipped decimal": typed(GRAMS, "odd-size", (cell) => Number(cell) / 10),
  "date as text": typed(DATE, "unreadable", () => "5/7"),
  "week instead of a date": typed(DATE, "unreadable", () => "w/c 10 July"),
  "date left blank": typed(DATE, "not-recorded", () => null),
  "label left blank": typed(PLANT, "not-recorded", () => null),
  "case and space": typed(MULCH, "names-alike", (cell) => `${String(cell).toUpperCase()} `),
  "part of a name": typed(MULCH, "names-alike", (cell) => String(cell).split(" ")[0] ?? ""),
  "slip in a name": typed(MULCH, "names-alike", (cell) => String(cell).slice(0, -1)),
  "spaces in a label": typed(PLANT, "names-alike", (cell) => String(cell).replace("-", " - ")),
  "subtotal row": inserted([null, "Week total", null, null, 1920], PLANT, "possible-total"),
  "total without a label": inserted([null, null, null, null, 1920], GRAMS, "possible-total"),
  "spacer row": inserted([null, null, null, null, null], DATE, "not-recorded"),
  "row entered twice": { rows: (row) => [row, row], listed: [1, DATE], kind: "possible-double" },
};

const MULCHES = ["Bare soil", "Straw mulch"];
const PLANTS = 8;
const VISITS = 4;

/** A clean log of eight plants picked on four days, about 200 g a fruit; drawn from one number, as that is quick. */
export const cleanLog: fc.Arbitrary<readonly LogRow[]> = fc.integer({ min: 0, max: 0xffffffff }).map((seed) => {
  const draw = seeded(seed);
  return Array.from({ length: PLANTS * VISITS }, (_, at): LogRow => {
    const plant = at % PLANTS;
    const date = 45_101 + 3 * Math.floor(at / PLANTS);
    const fruit = 1 + draw(4);
    const label = `B${1 + Math.floor(plant / 2)}-${1 + (plant % 2)}`;
    return [date, label, MULCHES[plant % 2] ?? "", fruit, fruit * (150 + draw(111))];
  });
});
