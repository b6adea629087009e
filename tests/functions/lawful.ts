import fc from "fast-check";
import { expect } from "vitest";
import { near } from "../near";
import { matrix } from "./call";

/** How many cases of each law are tried; the seed makes them the same at every run. */
export const runs = { numRuns: 60, seed: 11 };

// the last is far from the rest, so that no range ends with its own average or total
export const amount = fc.integer({ min: 200, max: 400 }).map((value) => value / 10);
export const plants = fc.array(amount, { minLength: 3, maxLength: 7 }).map((values) => [61.37, ...values, 17.9]);
export const factor = fc.constantFrom(0.001, 0.5, 1000);

const pick = fc.record({
  plant: fc.integer({ min: 1, max: 4 }),
  day: fc.integer({ min: 45_474, max: 45_520 }),
  amount,
});
/** A log of picks, of every plant one at least. */
export const log = fc
  .array(pick, { minLength: 6, maxLength: 20 })
  .map((picks) => [...[1, 2, 3, 4].map((plant) => ({ plant, day: 45_480 + plant, amount: 25.3 + plant })), ...picks]);
export type Log = readonly { readonly plant: number; readonly day: number; readonly amount: number }[];

export const labelsOf = (picks: Log) => picks.map(({ plant }) => `Plant ${plant}`);
export const mulches = (picks: Log) => picks.map(({ plant }) => (plant % 2 === 0 ? "Straw" : "Bare soil"));
export const days = (picks: Log) => picks.map(({ day }) => day);
export const amounts = (picks: Log) => picks.map((one) => one.amount);
export const everyPlant = [1, 2, 3, 4].map((plant) => `Plant ${plant}`);

export function tally(picks: Log): unknown[][] {
  return matrix("TALLYPICKS", labelsOf(picks), days(picks), amounts(picks), null, null, null, everyPlant);
}

export function halves(picks: Log): ReadonlyMap<unknown, unknown> {
  return new Map(
    matrix("HALFPICKED", labelsOf(picks), days(picks), amounts(picks), null, 45_470).map(([plant, day]) => [
      plant,
      day,
    ]),
  );
}

export function curve(picks: Log): ReadonlyMap<unknown, ReadonlyMap<unknown, unknown>> {
  const [[, ...names] = [], ...rows] = matrix("PICKCURVE", mulches(picks), days(picks), amounts(picks));
  return new Map(names.map((name, at) => [name, new Map(rows.map(([date, ...sums]) => [date, sums[at]]))]));
}

/** Two tables alike but for rounding; `expected` turns a number of the first into that of the second. */
export function expectAlike(
  one: readonly (readonly unknown[])[],
  other: readonly (readonly unknown[])[],
  expected: (label: unknown, value: number) => number = (_label, value) => value,
): void {
  expect(other.length).toBe(one.length);
  for (const [row, cells] of one.entries()) {
    for (const [column, value] of cells.entries()) {
      const now = other[row]?.[column];
      const where = `${cells[0]} ${column}`;
      if (typeof value !== "number") expect(now, where).toEqual(value);
      else near(where, Number(now), expected(cells[0], value), { relative: 1e-9, absolute: 1e-12 });
    }
  }
}

export const turned = <Item>(items: readonly Item[]): Item[] => [...items.slice(2), ...items.slice(0, 2)];
