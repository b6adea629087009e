import { describe, expect, it } from "vitest";
import { theDesk } from "../../../../src/answers/theDesk";
import type { Cell } from "../../../../src/nouns/cell";
import { copyOf } from "../../../../src/pane/check/clean/copyOf";
import { plantRows } from "../../../../src/pane/check/clean/plantRows";
import { rolesOf } from "../../../../src/pane/check/clean/roles";
import type { Shape } from "../../../../src/pane/check/clean/shape";
import { shapeOf } from "../../../../src/pane/check/clean/shapeOf";
import { cellsOf, lookedOver } from "./looked";

type Rows = readonly (readonly Cell[])[];

function copied(cells: Rows, shape: Partial<Shape> = {}) {
  const proposed = shapeOf(cells, theDesk);
  return copyOf(lookedOver(cells), { shape: { ...proposed, ...shape }, blankIsAbove: false }, theDesk);
}

const listed = (table: ReturnType<typeof copied>) =>
  table.changes.map(({ where, was, became }) => [where, was, became]);

/** METHODS 3, wide A: a title, treatments merged over a count and a weight, plants, total, average. */
const totals: Rows = [
  ["Courgettes 2023", null, null, null, null],
  [null, "Straw", null, "Bare soil", null],
  [null, "fruit", "grams", "fruit", "grams"],
  [1, 14, 3249, 10, 2252],
  [2, 17, "4.2 kg", 15, 3203],
  [3, "lost", "lost", 11, "2264*"],
  [4, null, null, 12, 2705],
  ["TOTAL", 31, 7449, 48, 10424],
  ["average", 15.5, 3724.5, 12, 2606],
];

describe("treatments across, each over a count and a weight", () => {
  it("headings, measures and layout are proposed", () => {
    expect(shapeOf(totals, theDesk)).toEqual({ layout: "treatments-across", headingRow: 2, blankIsNone: false });
  });

  it("every plant gets a row of its own, with its treatment", () => {
    expect(cellsOf(copied(totals))).toEqual([
      ["Plant", "Treatment", "Name 1", "fruit", "grams"],
      ["Straw 1", "Straw", 1, 14, 3249],
      ["Bare soil 1", "Bare soil", 1, 10, 2252],
      ["Straw 2", "Straw", 2, 17, 4200],
      ["Bare soil 2", "Bare soil", 2, 15, 3203],
      ["Straw 3", "Straw", 3, "lost", "lost"],
      ["Bare soil 3", "Bare soil", 3, 11, 2264],
      ["Bare soil 4", "Bare soil", 4, 12, 2705],
    ]);
  });

  it("title, totals and averages are left out and listed, readings by their cell in the sheet", () => {
    expect(listed(copied(totals))).toEqual([
      ["Picks!A1", "Courgettes 2023", "left out"],
      ["Picks!A8", "TOTAL", "left out"],
      ["Picks!A9", "average", "left out"],
      ["Picks!C5", "4.2 kg", "4200"],
      ["Picks!E6", "2264*", "2264"],
    ]);
  });
});

/** METHODS 3, wide B: plants down, days across as texts, cells that hold two things, a sum at the end. */
const picks: Rows = [
  ["plant", "mulch", "1/7", "15/7", "3rd", "total"],
  ["A1", "Straw", 310, "1+1", null, 312],
  ["A2", "Bare soil", null, "2 (310g)", 120, 430],
  ["A3", "Straw", "lost", null, null, 0],
];

describe("picking days across", () => {
  it("are proposed where they are days", () => {
    const days: Rows = [
      ["plant", "2023-07-01", "2023-07-03", 45_112],
      ["A1", 1, 2, 3],
      ["A2", 1, 2, 3],
    ];
    expect(shapeOf(days, theDesk).layout).toBe("picks-across");
    expect(shapeOf(picks, theDesk).layout).toBe("picks-across");
  });

  it("every plant and day gets a row; what is in doubt stands as it stood", () => {
    const table = copied(picks);
    expect(cellsOf(table)).toEqual([
      ["plant", "mulch", "Date", "Amount"],
      ["A1", "Straw", "1/7", 310],
      ["A1", "Straw", "15/7", 2],
      ["A1", "Straw", "3rd", null],
      ["A2", "Bare soil", "1/7", null],
      ["A2", "Bare soil", "15/7", "2 (310g)"],
      ["A2", "Bare soil", "3rd", 120],
      ["A3", "Straw", "1/7", "lost"],
      ["A3", "Straw", "15/7", null],
      ["A3", "Straw", "3rd", null],
    ]);
    expect(listed(table)).toContainEqual(["Picks!F1", "total", "left out"]);
    expect(listed(table).filter(([where]) => where === "Picks!E1")).toEqual([["Picks!E1", "3rd", "left as it stands"]]);
    expect(listed(table)).toContainEqual(["Picks!D3", "2 (310g)", "left as it stands"]);
    expect(listed(table)).toContainEqual(["Picks!C3", "empty", "left as it stands"]);
  });

  it("empty cells are nothing picked when the grower says so, and that is listed", () => {
    const table = copied(picks, { blankIsNone: true });
    expect(
      cellsOf(table)
        .slice(1, 5)
        .map((row) => row[3]),
    ).toEqual([310, 2, 0, 0]);
    expect(listed(table)).toContainEqual(["Picks!E1", "2 empty cells below", "0"]);
  });

  it("weeks across are no totals", () => {
    const weeks: Rows = [
      ["plant", "week 1", "week 2", "week 3"],
      ["A1", 1, 2, 3],
      ["A2", 1, 2, 3],
    ];
    const table = copied(weeks, { layout: "picks-across" });
    expect(cellsOf(table)).toHaveLength(7);
    expect(listed(table).filter(([, , became]) => became === "left out")).toEqual([]);
  });

  it("the rows per plant add up what stood across", () => {
    const days: Rows = [
      ["plant", "mulch", "2023-07-01", "2023-07-03", "2023-07-05"],
      ["A1", "Straw", 310, 120, "0.2kg"],
      ["A2", "Bare soil", 100, "none", 120],
      ["A3", "Straw", 50, "dead", null],
    ];
    const table = copied(days, { blankIsNone: true });
    const rows = plantRows(table, rolesOf(table.columns), theDesk);
    if (rows === null || typeof rows === "string") throw new Error(String(rows));
    const found = rows.slice(1).map((row) => row.map((cell) => cell?.content ?? null).slice(0, 3));
    expect(found).toEqual([
      ["A1", "Straw", 630],
      ["A2", "Bare soil", 220],
      ["A3", "Straw", "lost"],
    ]);
  });
});

it("a table of rows below a title: the title is left out and listed", () => {
  const table = copied([
    ["Beans 2023", null, null],
    ["plant", "mulch", "pods"],
    ["R1", "Straw", 12],
    ["R2", "Bare", "9*"],
  ]);
  expect(cellsOf(table)).toEqual([
    ["plant", "mulch", "pods"],
    ["R1", "Straw", 12],
    ["R2", "Bare", 9],
  ]);
  expect(listed(table)).toEqual([
    ["Picks!A1", "Beans 2023", "left out"],
    ["Picks!C4", "9*", "9"],
  ]);
});

it.each<[Rows, Shape["layout"]]>([
  [
    [
      ["plant", "Straw", "Bare soil"],
      ["1", 310, 290],
      ["2", 300, 280],
    ],
    "treatments-across",
  ],
  [
    [
      ["Straw", "Bare soil"],
      [310, 290],
      [300, 280],
    ],
    "treatments-across",
  ],
  [
    [
      ["plant", "fruit", "grams"],
      ["A1", 3, 290],
      ["A2", 4, 280],
    ],
    "rows",
  ],
  [
    [
      ["plant", "mulch", "bed", "grams"],
      ["A1", "Straw", 1, 290],
      ["A2", "Bare", 1, 280],
    ],
    "rows",
  ],
  [
    [
      ["date", "plant", "grams"],
      ["2023-07-01", "A1", 290],
      ["2023-07-03", "A1", 280],
    ],
    "rows",
  ],
])("%j is taken for %s", (cells, layout) => {
  expect(shapeOf(cells, theDesk).layout).toBe(layout);
});
