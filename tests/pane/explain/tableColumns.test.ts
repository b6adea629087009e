import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/nouns/cell";
import { tableColumns } from "../../../src/pane/explain/tableColumns";
import { demoPlants } from "../../functions/demo";

type Rows = readonly (readonly Cell[])[];

/** The headings found, by what they are for; "at 2" for a column without one. */
function found(cells: Rows) {
  const columns = tableColumns(cells);
  if (columns === null) return null;
  const name = ({ at, heading }: { at: number; heading: string }) => heading || `at ${at}`;
  const { amounts, treatments, beds, otherAmounts, rows, isPicks } = columns;
  return {
    amounts: name(amounts),
    treatments: name(treatments),
    beds: beds && name(beds),
    others: otherAmounts.map(name),
    rows,
    isPicks,
  };
}

const marlpit: Rows = demoPlants.map(({ plant, bed, treatment, grams }) => [plant, bed, treatment, grams]);
const headings = ["Plant", "Bed", "Mulch", "Grams"];
const known = { amounts: "Grams", treatments: "Mulch", beds: "Bed", others: [], isPicks: false };

describe("the demo, one plant a row", () => {
  it("by its headings", () => {
    expect(found([headings, ...marlpit])).toEqual({ ...known, rows: [0, 32] });
  });

  it("without them", () => {
    const bare = { amounts: "at 3", treatments: "at 2", beds: "at 1", others: [], isPicks: false };
    expect(found(marlpit.map(([, ...rest]) => ["", ...rest]))).toEqual({ ...bare, rows: [0, 31] });
  });

  it("below a title and an empty row, with empty rows at the end", () => {
    const rows = [["Marlpit Corner 2023", null, null, null], [null, null, null, null], headings, ...marlpit];
    expect(found([...rows, [null, null, null, null]])).toEqual({ ...known, rows: [2, 34] });
  });

  it("in any order, with a column of spots, of notes and of day numbers", () => {
    const rows: Rows = marlpit.map(([plant, bed, mulch, grams], at) => [
      grams ?? null,
      at % 9 === 0 ? "slugs" : null,
      mulch ?? null,
      (at % 4) + 1,
      bed ?? null,
      plant ?? null,
      45_100 + at,
    ]);
    const names = ["Weight (g)", "Note", "Cover", "Spot", "Block", "Label", "Last"];
    const beds = { amounts: "Weight (g)", treatments: "Cover", beds: "Block", others: [], isPicks: false };
    expect(found([names, ...rows])).toEqual({ ...beds, rows: [0, 32] });
  });

  it("amounts with their units typed in", () => {
    const rows: Rows = marlpit.map(([plant, bed, mulch, grams], at) => [
      ...[plant ?? null, bed ?? null, mulch ?? null],
      at % 3 === 0 && typeof grams === "number" ? `${grams} g` : (grams ?? null),
    ]);
    expect(found([headings, ...rows])).toEqual({ ...known, rows: [0, 32] });
  });

  it("two measures: the last is taken, the other named", () => {
    const rows: Rows = marlpit.map((row, at) => [...row.slice(0, 3), 10 + ((at * 7) % 9), row[3] ?? null]);
    expect(found([["Plant", "Bed", "Mulch", "Fruit", "Grams"], ...rows])).toMatchObject({
      ...known,
      others: ["Fruit"],
    });
  });
});

it("a log of picks: says that rows are picks", () => {
  const rows = readFileSync("tests/reference/demoLogClean.csv", "utf8")
    .trim()
    .split("\n")
    .map((line) =>
      line
        .replaceAll('"', "")
        .split(",")
        .map((cell) => (/^\d+$/.test(cell) ? Number(cell) : cell)),
    );
  expect(found(rows)?.isPicks).toBe(true);
});

it("treatments that are figures, below a heading that says so", () => {
  const rows: Rows = [30, 45, 60, 30, 45, 60].map((spacing, at) => [spacing, 2000 + at * 31]);
  expect(found([["Spacing", "Grams"], ...rows])).toMatchObject({ amounts: "Grams", treatments: "Spacing", beds: null });
});

it("rows headed as a place are beds where each holds every treatment once", () => {
  const rows: Rows = ["bare", "straw", "bare", "straw"].map((name, at) => [
    Math.floor(at / 2) + 1,
    name,
    2000 + at * 31,
  ]);
  expect(found([["Row", "Way", "g"], ...rows])?.beds).toBe("Row");
  const apart: Rows = rows.map(([, ...rest], at) => [at % 2, ...rest]);
  expect(found([["Row", "Way", "g"], ...apart])?.beds).toBeNull();
});

describe("no table of plants", () => {
  it.each<[string, Rows]>([
    ["nothing", []],
    ["empty cells", [[null, ""]]],
    [
      "numbers only",
      [
        ["Bare", "Straw"],
        [1200, 1300],
        [1250, 1410],
      ],
    ],
    [
      "names only",
      [
        ["a", "b"],
        ["a", "b"],
      ],
    ],
    [
      "every plant another name",
      [
        ["Kind", "Grams"],
        ["a", 1200],
        ["b", 1350],
      ],
    ],
  ])("%s", (_, rows) => {
    expect(found(rows)).toBeNull();
  });
});
