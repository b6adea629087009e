import fc from "fast-check";
import { expect, it } from "vitest";
import { repeatedRows } from "../../src/methods/repeatedRows";
import { pickRows } from "./pickRows";

it("rows equal in owner, day and amount; each tells the first of them", () => {
  const log = pickRows([
    [0, 5, 10],
    [0, 5, 11],
    [1, 5, 10],
    [0, 5, 10],
    [0, 5.5, 10],
    [0, 5, 10],
  ]);
  expect(repeatedRows(log)).toEqual([
    { row: 3, like: 0 },
    { row: 5, like: 0 },
  ]);
});

it("what is not known repeats nothing: owner, day, amount, or all days", () => {
  const unknown = Number.NaN;
  const twice = (row: readonly [number, number, number]) => repeatedRows(pickRows([row, row]));
  expect([twice([-1, 5, 10]), twice([0, unknown, 10]), twice([0, 5, unknown])].flat()).toEqual([]);
  expect(
    repeatedRows({
      ...pickRows([
        [0, 5, 1],
        [0, 5, 1],
      ]),
      days: null,
    }),
  ).toEqual([]);
});

it("finds the rows that comparing each with each finds", () => {
  const row = fc.tuple(
    fc.integer({ min: -1, max: 3 }),
    fc.integer({ min: 0, max: 8 }).map((n) => n / 4),
    fc.integer({ min: 45_000, max: 45_004 }),
  );
  fc.assert(
    fc.property(fc.array(row, { maxLength: 60 }), (rows) => {
      const same = (one: number, other: number) => String(rows[one]) === String(rows[other]);
      const expected = rows.flatMap(([owner], at) => {
        const like = rows.findIndex((_, before) => same(before, at));
        return owner >= 0 && like < at ? [{ row: at, like }] : [];
      });
      expect(repeatedRows(pickRows(rows))).toEqual(expected);
    }),
    { numRuns: 300, seed: 6 },
  );
});

/** The same numbers, and how often they were read one by one. */
function counted(numbers: Int32Array): { readonly numbers: Int32Array; readonly reads: () => number } {
  let reads = 0;
  const watched = new Proxy(numbers, {
    get(target, key) {
      if (/^\d+$/.test(String(key))) reads += 1;
      const found: unknown = Reflect.get(target, key, target);
      return typeof found === "function" ? found.bind(target) : found;
    },
  });
  return { numbers: watched, reads: () => reads };
}

/** How often a row's owner is read while rows are told apart. */
function looksEach(rowOf: (row: number) => readonly [number, number, number]): number {
  const log = pickRows(Array.from({ length: 5000 }, (_, row) => rowOf(row)));
  const owners = counted(log.owners);
  expect(repeatedRows({ ...log, owners: owners.numbers })).toEqual([]);
  return owners.reads() / 5000;
}

// comparing each row with each would read thousands of times as much
it.each([
  ["owner", (row: number) => [row, 0.25, 45_000] as const],
  ["day", (row: number) => [0, 0.25, 40_000 + row] as const],
  ["amount in grams", (row: number) => [0, row, 45_000] as const],
  ["amount in kilograms", (row: number) => [0, row / 1000, 45_000] as const],
])("rows that differ in their %s only are told apart in a few looks each", (_what, rowOf) => {
  const looks = looksEach(rowOf);
  expect(looks).toBeGreaterThan(0);
  expect(looks).toBeLessThan(10);
});

it.each([
  ["amount", [0, Number.NaN, 45_000]],
  ["day", [0, 0.25, Number.NaN]],
] as const)("neither do thousands of rows of unknown %s stand in each other's way", (_what, row) => {
  expect(looksEach(() => row)).toBeLessThan(10);
});
