import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { readBlock } from "../../src/ranges/readBlock";
import { rowsAside } from "../../src/ranges/rowsAside";
import { block } from "./column";

const rows: readonly (readonly Cell[])[] = [
  ["plant", "mulch", "grams"],
  ["B1", "Straw", 300],
  ["B2", "Weekly feed", 310],
  ["B3", "Straw", 290],
  ["B4", "Bare", 280],
  ["B5", "Weekly feed", 295],
  ["B6", "Bare", 305],
];

function aside(...more: readonly (readonly Cell[])[]): unknown {
  return rowsAside(readBlock(block([...rows, ...more]), null)).map(({ row, at, why }) => [row, at, why]);
}

describe("rows of no plant (METHODS 3)", () => {
  it("a full row with a word for totals in a name is a plant's", () => expect(aside()).toEqual([]));

  it("a label of a total beside an empty cell, an amount without a label, an empty row", () => {
    const more = [
      ["Week total", null, 1780],
      [null, null, 1780],
      [null, null, null],
      [null, "Average", 297],
      ["B7", null, 300],
    ];
    expect(aside(...more)).toEqual([
      [6, 0, "label"],
      [7, 2, "no-label"],
      [8, 0, "empty-row"],
      [9, 1, "label"],
    ]);
  });
});

it("totals below every two plants, however many", () => {
  const cells = [
    ["mulch", "grams"],
    ["Straw", 3],
    ["Bare", 4],
    ["Total", 7],
    ["Straw", 5],
    ["Bare", 6],
    ["Total", 11],
  ];
  expect(rowsAside(readBlock(block(cells), null)).map(({ row }) => row)).toEqual([2, 5]);
});

it("one column of names with a total at its foot", () => {
  const cells = [
    ["mulch", "grams"],
    ["Straw", 3],
    ["Bare", 4],
    ["Hay", 5],
    ["Wool", 6],
    ["TOTAL", 18],
  ];
  expect(rowsAside(readBlock(block(cells), null))).toEqual([{ row: 4, at: 0, why: "label" }]);
});

const asideIn = (cells: readonly (readonly Cell[])[]) =>
  rowsAside(readBlock(block(cells), null)).map(({ row, at, why }) => [row, at, why]);

it("without a label, a number among the amounts tells, no date and no note", () => {
  const cells = [
    ["plant", "date", "fruit", "grams"],
    ["B1", 45112, 2, 300],
    ["B2", 45112, 3, 310],
    ["B3", 45113, 2, 290],
    [null, 45114, null, null],
    [null, 45114, "slugs", null],
    [null, 45114, null, 900],
  ];
  expect(asideIn(cells)).toEqual([[5, 3, "no-label"]]);
});

describe("a label that says more than total stays a name where a quarter of the rows has it (totalLabels)", () => {
  const pick = (mulch: string) => [mulch, 300];
  const rest = ["Straw", "Straw", "Straw", "Bare", "Bare", "Bare"].map(pick);

  it("twice among eight", () => {
    expect(asideIn([["mulch", "grams"], ...rest, pick("Weekly feed"), pick("Weekly feed")])).toEqual([]);
  });

  it("but not twice among nine, and not once", () => {
    const nine = [["mulch", "grams"], ...rest, pick("Bed total"), pick("Bed total"), pick("Straw")];
    expect(asideIn(nine)).toEqual([
      [6, 0, "label"],
      [7, 0, "label"],
    ]);
    expect(asideIn([["mulch", "grams"], ...rest, pick("Bed total")])).toEqual([[6, 0, "label"]]);
  });
});

it("a block of notes alone has no row to set aside", () => {
  expect(asideIn([["windy"], [null], [null], [null], ["Total"]])).toEqual([]);
});
