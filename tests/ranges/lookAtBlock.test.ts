import { expect, it } from "vitest";
import { lookAtBlock } from "../../src/ranges/lookAtBlock";
import { readBlock } from "../../src/ranges/readBlock";
import { block, column } from "./column";

it("reads each column by its kind, without the rows set aside", () => {
  const rows = [
    ["date", "plant", "grams"],
    [45_112, "B1", 300],
    [null, "Total", 300],
    ["5/7", "B2", "310 g"],
  ];
  const { columns, aside } = lookAtBlock(readBlock(block(rows), null));
  expect(aside).toEqual([{ row: 1, at: 1, why: "label" }]);
  expect(columns.map(({ kind, noted }) => [kind, noted.map(({ row }) => row)])).toEqual([
    ["date", [2]],
    ["label", []],
    ["amount", [2]],
  ]);
});

it("a total or an average at the foot of amounts alone is set aside; beside labels the label tells", () => {
  const sums = [3, 4, 6, 5, 18];
  expect(lookAtBlock(readBlock(column(sums), null)).aside).toEqual([{ row: 4, at: 0, why: "total" }]);
  expect(lookAtBlock(readBlock(column([3, 4, 6, 5, 4.5]), null)).aside).toMatchObject([{ why: "average" }]);
  expect(lookAtBlock(readBlock(column([3, 4, 6, 5, 9]), null)).aside).toEqual([]);
  const labelled = block(sums.map((sum, at) => [`B${at}`, sum]));
  expect(lookAtBlock(readBlock(labelled, null)).aside).toEqual([]);
});

it("a total at the foot is over all numbers, or over the number cells alone as SUM has it; notes are no numbers", () => {
  const asideOf = (...cells: Parameters<typeof column>[0]) => lookAtBlock(readBlock(column(cells), null)).aside;
  expect(asideOf(3, "4", "lost", 6, 5, 18)).toEqual([{ row: 5, at: 0, why: "total" }]);
  expect(asideOf(3, "4", 6, 5, 7, 21)).toEqual([{ row: 5, at: 0, why: "total" }]);
});

it("finds the total of amounts that stand beside dates", () => {
  const rows = [3, 4, 6, 5, 18].map((amount, day) => [45_112 + day, amount]);
  expect(lookAtBlock(readBlock(block(rows), null)).aside).toEqual([{ row: 4, at: 1, why: "total" }]);
});

it("a column of notes is not looked at, and amounts without a total set nothing aside", () => {
  const rows = [
    ["date", "grams", "notes"],
    [45_112, 300, "rain"],
    [45_113, 310, "slugs"],
    [45_114, 280, "slugs"],
    [45_115, 320, null],
    [45_116, 305, null],
  ];
  const { columns, aside } = lookAtBlock(readBlock(block(rows), null));
  expect(columns.map(({ kind }) => kind)).toEqual(["date", "amount"]);
  expect(aside).toEqual([]);
});
