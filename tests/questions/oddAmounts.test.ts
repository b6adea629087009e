import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { type OddRules, oddAmounts } from "../../src/questions/oddAmounts";
import { lookAtBlock } from "../../src/ranges/lookAtBlock";
import { readBlock } from "../../src/ranges/readBlock";
import { block } from "../ranges/column";

/** What stands out in a block: row below the heading and column, both from 0, and why. */
function odd(cells: readonly (readonly Cell[])[], rules: Partial<OddRules> = {}) {
  const looked = lookAtBlock(readBlock(block(cells), null));
  const found = oddAmounts(looked, { perPlant: null, lowest: null, highest: null, ...rules });
  return found.map(({ row, at, because }) => [row, at, because]);
}

const column = (heading: string, numbers: readonly number[]) => [[heading], ...numbers.map((number) => [number])];

describe("limits", () => {
  it.each([
    [[5, 6, 7, -1], {}, [[3, 0, "below-zero"]]],
    [[5, 6, 7, -1], { lowest: -2 }, []],
    [[5, 6, 7, -1], { lowest: -1 }, []],
    [[5, 6, 7, -1], { lowest: -0.5 }, [[3, 0, "below-zero"]]],
    [[5, 6, 7, -1], { highest: 9 }, [[3, 0, "below-zero"]]],
    [
      [5, 6, 7, 8],
      { lowest: 6, highest: 7 },
      [
        [0, 0, "beyond-limits"],
        [3, 0, "beyond-limits"],
      ],
    ],
    [[9e8, 8e8, 1e9], {}, []],
    [[9e8, 8e8, 1.1e9], {}, [[2, 0, "huge"]]],
    [[9e8, 8e8, 1.1e9], { highest: 1e9 }, [[2, 0, "huge"]]],
  ])("%j held to %j: %j", (numbers, rules, expected) => {
    expect(odd(column("change", numbers), rules)).toEqual(expected);
  });

  it("are for weights, not for the fruit counted beside them; fewer than none is wrong of any", () => {
    const rows = [
      ["fruit", "grams", "flowers"],
      [2, 400, 3],
      [1, 20, 2],
      [3, 600, 4],
      [-1, 200, 2],
    ];
    expect(odd(rows, { lowest: 50, highest: 500 })).toEqual([
      [3, 0, "below-zero"],
      [1, 1, "beyond-limits"],
      [2, 1, "beyond-limits"],
    ]);
  });

  it("hold for two measurements of one plant", () => {
    const rows = [
      ["length", "grams"],
      [30, 400],
      [2, 300],
      [28, 9],
    ];
    expect(odd(rows, { lowest: 10 })).toEqual([
      [1, 0, "beyond-limits"],
      [2, 1, "beyond-limits"],
    ]);
  });
});

describe("totals per plant are far from five times the middle on, single picks from eight times", () => {
  const grams = [100, 110, 90, 105, 600];
  const far = (row: number, at: number) => [[row, at, "far"]];
  const beside = (labels: readonly Cell[]) => grams.map((weight, at) => [labels[at] ?? null, weight]);

  it("plants that each have a name hold totals", () => {
    expect(odd(beside(["B1", "B2", "B3", "B4", "B5"]))).toEqual(far(4, 1));
  });

  it("plants without a total, and empty rows between them, change nothing", () => {
    const rows = [
      ["B1", 100],
      ["B2", 110],
      [null, null],
      ["B3", null],
      ["B4", 90],
      [null, null],
      ["B5", 105],
    ];
    expect(odd([...rows, ["B6", 600]])).toEqual(far(7, 1));
  });

  it("names that come again, and names beside dates, are those of picks", () => {
    expect(odd(beside(["B1", "B2", "B3", "B4", "B1"]))).toEqual([]);
    const dated = grams.map((weight, at) => [`2023-07-0${at + 1}`, `B${at}`, weight]);
    expect(odd(dated)).toEqual([]);
    expect(odd([...dated, ["2023-07-09", "B9", 900]])).toEqual([[5, 2, "far"]]);
  });

  it("words beside sums are no names of plants, though each comes once", () => {
    const rows = ["Total June", "Total July", "Sum", "Average"].flatMap((word, at) => [
      [null, "Straw", grams[at + 1] ?? null],
      [word, null, 100],
    ]);
    expect(odd(rows)).toEqual([]);
  });

  it("what was said of the cells goes before what their names tell", () => {
    expect(odd(beside(["B1", "B2", "B3", "B4", "B5"]), { perPlant: false })).toEqual([]);
    expect(odd(beside(["B1", "B2", "B3", "B4", "B1"]), { perPlant: true })).toEqual(far(4, 1));
  });

  it("the total at the end of a column is listed as such, not by its size", () => {
    const picks = [3, 4, 5, 3, 4, 5, 3, 4, 5];
    // they come to 36, nine times the middle pick of 4
    expect(odd(column("kg", [...picks, 36]))).toEqual([]);
    expect(odd(column("kg", [...picks, 37]))).toEqual([[9, 0, "far"]]);
  });
});

describe("weights are judged per fruit", () => {
  /** Two to five fruit a pick, of 200 g each; but in the fourth 3 fruit of 40 g, a fifth of that. */
  const fruit = [2, 3, 5, 3, 2, 4, 3, 2, 5];
  const grams = [400, 600, 1000, 120, 400, 800, 600, 400, 1000];
  /** As many flowers left as fruit, but one in the third and fourth: 1000 g a flower are five times the middle of 200. */
  const flowers = [2, 3, 1, 1, 2, 4, 3, 2, 5];
  const table = (...columns: readonly (readonly Cell[])[]) => {
    const [first = []] = columns;
    return first.map((_, row) => columns.map((cells) => cells[row] ?? null));
  };
  const [counted, weighed, left] = [
    ["fruit", ...fruit],
    ["grams", ...grams],
    ["flowers", ...flowers],
  ];

  it("without counts a small pick tells nothing", () => {
    expect(odd(table(weighed))).toEqual([]);
  });

  it("counted before or after them", () => {
    expect(odd(table(counted, weighed))).toEqual([[3, 1, "far"]]);
    expect(odd(table(weighed, counted))).toEqual([[3, 0, "far"]]);
  });

  it("by the nearest column of counts, one before them first", () => {
    expect(odd(table(left, counted, weighed))).toEqual([[3, 2, "far"]]);
    expect(odd(table(weighed, counted, left))).toEqual([[3, 0, "far"]]);
    expect(odd(table(counted, weighed, left))).toEqual([[3, 1, "far"]]);
  });

  it("a few rows under a heading that says so", () => {
    expect(odd(table(counted, weighed).slice(0, 6))).toEqual([[3, 1, "far"]]);
  });

  it("where no heading says so, eight rows of numbers tell", () => {
    expect(odd(table(fruit, grams))).toEqual([[3, 1, "far"]]);
    expect(odd(table(fruit, grams), { lowest: 50 })).toEqual([[3, 1, "far"]]);
    expect(odd(table(fruit.slice(0, 6), grams.slice(0, 6)))).toEqual([]);
  });

  it("but not per another measurement", () => {
    const lengths = [20, 30, 50, 30, 20, 40, 30, 20, 50].map((length) => length + 0.5);
    expect(odd(table(["length", ...lengths], weighed))).toEqual([]);
  });
});
