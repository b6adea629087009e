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
    ["names in half of the rows", ["slugs", "rain", null, null], null, "label"],
    ["names with a day among them", ["Straw", "Bare", 45_112, null, null, null], null, "label"],
    ["names under a heading that speaks of notes", ["Straw", "Bare"], "Mulch (see notes)", "label"],
    ["one note", ["slugs"], " Note", "notes"],
    ["a remark", ["slugs"], "Remark", "notes"],
    ["amounts with a name", [300, 310, "slugs"], null, "amount"],
    ["as many amounts as names", [300, "slugs"], null, "amount"],
    ["as many days as names", [45_112, "slugs"], null, "date"],
    ["amounts with a day", [300, 310, 45_112], null, "amount"],
    ["amounts in texts with a day", ["300", "310", "5 July"], null, "amount"],
    ["amounts with units and a day", ["177 g", "180 g", "5 July"], null, "amount"],
    ["numbers under a heading with spaces round it", [1, 2, 3], " Bed ", "label"],
    ["days under a heading of names", [45_112, 45_113], "Plot", "date"],
    ["Excel's days as texts", ["45112", "45113"], null, "date"],
    ["days without marks", [20_230_705, 20_230_706], null, "date"],
    ["the first and the last day without marks", [19_980_101, 20_501_231], null, "date"],
    ["eight digits before our years", [19_980_100], null, "amount"],
    ["eight digits after our years", [20_501_232], null, "amount"],
    ["eight digits with a part", [20_230_705.5], null, "amount"],
    ["days without marks as texts, years before ours too", ["19970704", " 19970705 "], null, "date"],
    ["days with marks between numbers", ["24-06-2023", "25-06-2023"], null, "date"],
    ["numbered names of two digits", ["11-12", "12 - 11", " 10-10 "], null, "label"],
    ["numbered names with a day more", ["12-1", "1-12", 45_112], null, "label"],
    ["nothing picked", ["none", "–", "nil", 45_112], null, "amount"],
    ["words for no number", ["n/a", "forgot", "?", 45_112], null, "amount"],
    ["plants lost", ["lost", "dead", 45_112], null, "amount"],
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
  ["none", false],
  ["not weighed", false],
])("%s may stand in a heading row: %s", (cell, may) => {
  expect(isHeadingLike(cell)).toBe(may);
});
