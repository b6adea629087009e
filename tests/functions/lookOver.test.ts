import { describe, expect, it } from "vitest";
import { at, cell, matrix, refused } from "./call";
import { log, logRows } from "./log";

const messy = log("demoLogMessy");

/** The row numbers that the table names beside each line. */
const table = matrix("LOOKOVER", messy, "table");
const rowsOf = (line: string): readonly string[] =>
  String(table.find(([what]) => what === line)?.[2] ?? "").split(", ");

/** Which line finds each slip of demoLogMessySlips.csv. */
const lineFor: Readonly<Record<string, string>> = {
  "unit typed, kilograms": "Units converted",
  "unit typed, grams": "Units converted",
  "treatment name differs by case/space": "Names nearly alike",
  "treatment name spelled another way": "Names nearly alike",
  "extra zero typed": "Unusually big or small",
  "date typed as text, no year, day/month order unclear": "Unreadable",
  "date left blank under a merged cell": "Empty or not recorded",
  "weight missing, fruit counted": "Empty or not recorded",
  "mark after number": "Marks removed",
  "subtotal row inside the data": "Possible totals or averages",
  "sum typed as text": "Marks removed",
  "comma in number": "Units converted",
  "plant label typed another way": "Names nearly alike",
  "word before number": "Marks removed",
  "row entered twice": "Possible doubles",
  "dash for nothing picked": "None, read as 0",
  "blank spacer row": "Empty or not recorded",
  "dead plant noted in a number cell": "Lost",
  "lost plant noted in a number cell": "Lost",
};

describe("the messy log of Marlpit Corner", () => {
  const slips = logRows("demoLogMessySlips").slice(1);

  it("has its twenty slips", () => expect(slips).toHaveLength(20));

  it.each(slips)("row %s: %s", (row, slip) => {
    expect(rowsOf(lineFor[String(slip)] ?? "")).toContain(String(row));
  });

  it("and nothing else needs a look but two names used once, each as METHODS' rule names it", () => {
    expect(table).toEqual([
      ["What", "How many", "Where", "Example"],
      ["Unreadable", 1, "72", "5/7: 5 July or 7 May"],
      ["Possible totals or averages", 2, "108, 208", "Week total"],
      ["Possible doubles", 1, "219", "as row 218"],
      ["Unusually big or small", 1, "60", "2220"],
      ["Empty or not recorded", 3, "73, 92, 275", "empty"],
      ["Names nearly alike", 3, "35, 49, 181", "grass clippings (1), Grass clippings (79)"],
      // "bare" of row 49, and the lost plant B2-1, which bore nothing
      ["Names used once", 2, "49, 331", "bare"],
      ["Lost", 2, "331, 332", "dead"],
      ["None, read as 0", 1, "236", "-"],
      ["Zeros", 1, "236", "0"],
      ["Units converted", 3, "14, 27, 158", "0.235kg = 235 g"],
      ["Marks removed", 3, "106, 136, 204", "506* = 506 g"],
      ["Numbers read", 651, "", ""],
    ]);
    expect(cell("LOOKOVER", messy)).toBe("1986 cells read, 12 need a look");
  });

  it("each line, each column and the words by themselves", () => {
    expect(cell("LOOKOVER", messy, "Marks removed")).toBe(3);
    expect(cell("LOOKOVER", messy, "errors")).toBe(0);
    expect(matrix("LOOKOVER", messy, "How many").flat()).toEqual(table.slice(1).map(([, many]) => many));
    expect(cell("LOOKOVER", messy, "words")).toBe(
      "1986 cells read, 12 need a look. First look at D35 (like another name), D49 (like another name) and F60 " +
        "(unusual size). 6 cells had units or marks typed in; they were read as numbers.",
    );
    expect(cell("LOOKOVER", messy, "cautions")).toMatch(/^6 cells had units/);
  });
});

it("in the clean log nothing is flagged", () => {
  expect(matrix("LOOKOVER", log("demoLogClean"), "table")).toEqual([
    ["What", "How many", "Where", "Example"],
    ["Numbers read", 648, "", ""],
  ]);
  expect(cell("LOOKOVER", log("demoLogClean"))).toBe("1944 cells read, none need a look");
});

describe("one column", () => {
  it("of amounts, with a heading and with a total at its end", () => {
    const shown = matrix("LOOKOVER", at("Trial!D1:D7", ["grams", 300, 310, "290 g", 320, "forgot", 1220]), "table");
    expect(shown.slice(1)).toEqual([
      ["Possible totals or averages", 1, "7", "1220"],
      ["Empty or not recorded", 1, "6", "forgot"],
      ["Units converted", 1, "4", "290 g = 290 g"],
      ["Numbers read", 5, "", ""],
    ]);
  });

  it("of doubtful numbers, errors and dates that Excel made", () => {
    const cells = [300, 310, "1,250", { type: "Error", basicValue: "#N/A" }, 45_112, 305, 290, 280, "2 (1 split)"];
    expect(matrix("LOOKOVER", cells, "table").slice(1)).toEqual([
      ["Unreadable", 2, "3, 9", "1,250: 1250 or 1.25"],
      ["Looks like a date Excel made", 1, "5", "45112: 5 July 2023"],
      ["Errors", 1, "4", "#N/A"],
      ["Numbers read", 5, "", ""],
    ]);
  });

  it("kind says how sizes are judged: totals per plant at five times the middle, single picks at eight", () => {
    const cells = [100, 110, 90, 105, 600];
    expect(cell("LOOKOVER", cells, "Unusually big or small")).toBe(0);
    expect(cell("LOOKOVER", cells, "Unusually big or small", "per plant")).toBe(1);
    expect(cell("LOOKOVER", [100, 110, 90, 105, 850], "Unusually big or small")).toBe(1);
  });

  it("lists what is beyond the limits that the grower sets, and amounts below zero", () => {
    expect(cell("LOOKOVER", [5, 6, 7, -1], "Unusually big or small")).toBe(1);
    expect(cell("LOOKOVER", [5, 6, 7, -1], "Unusually big or small", null, -2)).toBe(0);
    expect(cell("LOOKOVER", [5, 6, 7, 8], "Unusually big or small", null, 6, 7)).toBe(2);
  });

  it("names first ten rows only", () => {
    const cells = Array.from({ length: 12 }, () => "slugs here");
    expect(matrix("LOOKOVER", cells, "Where", "amount").flat()).toEqual(["1, 2, 3, 4, 5, 6, 7, 8, 9, 10 …"]);
  });

  it("of dates and of labels, also when told so", () => {
    expect(cell("LOOKOVER", ["24/6/23", "5/7/23", "3rd"], "Unreadable", "date")).toBe(1);
    expect(
      cell("LOOKOVER", ["mulch", "Straw", "straw ", "Straw", "Bare soil", "Bare soil"], "Names nearly alike"),
    ).toBe(1);
  });
});

it("empty cells have no answer, in text", () => {
  expect(cell("LOOKOVER", [null, null])).toBe("No answer: nothing in these cells");
  expect(cell("LOOKOVER", [null], "words")).toBe("No answer: nothing in these cells.");
});

it("refuses what it cannot take", () => {
  expect(refused("LOOKOVER", null).code).toBe("#VALUE!");
  expect(refused("LOOKOVER", [1], "amount").message).toMatch(/one place further on/);
  expect(refused("LOOKOVER", [1], null, "plants").message).toMatch(/amount.*per plant/);
  expect(refused("LOOKOVER", [1], null, null, "low").message).toMatch(/lowest_ok/i);
  expect(refused("LOOKOVER", [1], "Sizes").message).toMatch(/Unusually big or small/);
});
