import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { doubleRows } from "../../src/questions/doubleRows";
import { lookAtBlock } from "../../src/ranges/lookAtBlock";
import { readBlock } from "../../src/ranges/readBlock";
import { block } from "../ranges/column";

/** Rows that equal an earlier one, counted from 0 below the heading. */
function doubles(...rows: readonly (readonly Cell[])[]) {
  return doubleRows(lookAtBlock(readBlock(block(rows), null)));
}

const [JULY_5, JULY_8] = [45_112, 45_115];

it.each<[string, readonly (readonly Cell[])[], boolean]>([
  [
    "a date beside a name",
    [
      ["date", "plant", "grams"],
      [JULY_5, "B1", 300],
      [JULY_5, "B1", 300],
      [JULY_8, "B2", 280],
    ],
    true,
  ],
  [
    "names in two columns",
    [
      ["plant", "mulch", "grams"],
      ["B1", "Straw", 300],
      ["B1", "Straw", 300],
      ["B2", "Bare", 280],
    ],
    true,
  ],
  [
    "names in one column, no date",
    [
      ["mulch", "grams"],
      ["Straw", 300],
      ["Straw", 300],
      ["Bare", 280],
    ],
    false,
  ],
  [
    "dates, no names",
    [
      ["date", "grams"],
      [JULY_5, 300],
      [JULY_5, 300],
      [JULY_8, 280],
    ],
    false,
  ],
  [
    "amounts alone",
    [
      ["fruit", "grams"],
      [1, 300],
      [1, 300],
      [2, 280],
    ],
    false,
  ],
  [
    "no amounts",
    [
      ["date", "plant", "mulch"],
      [JULY_5, "B1", "Straw"],
      [JULY_5, "B1", "Straw"],
      [JULY_8, "B2", "Bare"],
    ],
    false,
  ],
])("equal rows with %s", (_what, rows, told) => {
  expect(doubles(...rows)).toEqual(told ? [{ row: 1, like: 0 }] : []);
});

const heading = ["date", "plant", "fruit", "grams"];
const others = [3, 4, 5, 6].map((fruit) => [JULY_8, `B${fruit}`, fruit, 200 * fruit]);

it("each equal row is told with the first of them", () => {
  const row = [JULY_5, "B1", 1, 300];
  expect(doubles(heading, others[0] ?? [], row, [JULY_8, "B1", 1, 300], row, row)).toEqual([
    { row: 3, like: 1 },
    { row: 4, like: 1 },
  ]);
});

it.each<[string, readonly Cell[], readonly Cell[]]>([
  ["a name typed with other capitals", [JULY_5, "B1", 1, 300], [JULY_5, "b1", 1, 300]],
  ["an amount typed in another unit", [JULY_5, "B1", 1, 300], [JULY_5, "B1", 1, "0.3 kg"]],
  ["one amount left empty in both", [JULY_5, "B1", null, 300], [JULY_5, "B1", null, 300]],
  ["one note in both", [JULY_5, "B1", "slugs", 300], [JULY_5, "B1", "slugs", 300]],
])("rows are the same with %s", (_what, one, same) => {
  expect(doubles(heading, one, same, ...others)).toEqual([{ row: 1, like: 0 }]);
});

it.each<[string, readonly Cell[], readonly Cell[]]>([
  ["another date", [JULY_5, "B1", 1, 300], [JULY_8, "B1", 1, 300]],
  ["another plant", [JULY_5, "B1", 1, 300], [JULY_5, "B2", 1, 300]],
  ["another amount", [JULY_5, "B1", 1, 300], [JULY_5, "B1", 1, 310]],
  ["digits that only read the same when run together", [JULY_5, "B1", 1, 2300], [JULY_5, "B1", 12, 300]],
  ["another note", [JULY_5, "B1", "slugs", 300], [JULY_5, "B1", "2 split", 300]],
  ["a note instead of an empty cell", [JULY_5, "B1", null, 300], [JULY_5, "B1", "slugs", 300]],
  ["no amount in either", [JULY_5, "B1", null, null], [JULY_5, "B1", null, null]],
])("rows differ with %s", (_what, one, differing) => {
  expect(doubles(heading, one, differing, ...others)).toEqual([]);
});

it("rows of totals are nobody's pick, however alike", () => {
  const total = [null, "Week total", null, 820];
  expect(doubles(heading, [JULY_5, "B1", 1, 300], total, ...others, total)).toEqual([]);
});
