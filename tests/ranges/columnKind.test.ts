import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { columnKind, isHeadingLike } from "../../src/ranges/columnKind";

describe("what most cells of a column are", () => {
  it.each<[string, readonly Cell[], string | null, string]>([
    ["numbers", [300, 310, null, "lost"], null, "amount"],
    ["amounts with units", ["177 g", "0,2 kg", "approx 3"], null, "amount"],
    ["Excel's days", [45_112, 45_113, "5/7"], null, "date"],
    ["days as texts", ["5 July", "2023-07-05", "w/c 10 July"], null, "date"],
    ["large weights with a unit in the heading", [45_112, 45_113], "weight (g)", "amount"],
    ["names", ["Straw", "Bare", 3], null, "label"],
    ["numbered names", ["1-1", "1-2", "2-1"], null, "label"],
    ["numbers under a heading of names", [1, 2, 3], "Bed", "label"],
    ["numbers under a heading that says that they are names", [1, 2, 3], "Plant no. (stake)", "label"],
    ["numbers under a heading of a place", [1, 2, 3], "Position in row", "label"],
    ["weights of plants", [200, 300, 250], "Plant weight (g)", "amount"],
    ["weights of plants, the unit alone", [200, 300, 250], "Plant (g)", "amount"],
    ["weights of plants, no unit named", [200, 300, 250], "Plant weight", "amount"],
    ["amounts, a bed in each column", [200, 300, 250], "Bed 2", "amount"],
    ["dates under a heading of names", [45_112, 45_113], "Plot date", "date"],
    ["few names", ["slugs", null, null], null, "notes"],
    ["names under a heading of notes", ["slugs", "rain"], "Notes", "notes"],
    ["nothing", [null, { error: "#N/A" }], null, "amount"],
  ])("%s", (_, cells, heading, kind) => {
    expect(columnKind(cells, heading)).toBe(kind);
  });
});

it.each<[Cell, boolean]>([
  ["grams", true],
  [null, true],
  ["12 g", false],
  ["5 July", false],
  [12, false],
  [true, false],
  ["lost", false],
])("%s may stand in a heading row: %s", (cell, may) => {
  expect(isHeadingLike(cell)).toBe(may);
});
