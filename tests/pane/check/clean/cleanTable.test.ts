import { describe, expect, it } from "vitest";
import type { Cell } from "../../../../src/nouns/cell";
import { cellsOf, cleaned } from "./looked";

const heads = ["date", "plant", "mulch", "grams", "note"];
const straw = (day: number, grams: Cell, note: Cell = null): readonly Cell[] => [
  `2023-07-0${day}`,
  `B1-${day}`,
  "Straw",
  grams,
  note,
];
/** 1 July 2023 is 45108 in Excel (R: as.integer(as.Date("2023-07-01")) + 25569). */
const july = (day: number) => 45_107 + day;

describe("the clean copy of a log", () => {
  const table = cleaned([
    heads,
    straw(1, 200, '=HYPERLINK("x")'),
    straw(2, "0.235kg"),
    straw(3, "506*"),
    straw(4, "-"),
    straw(5, "210"),
    ["6 July 2023", "B1 - 1", "straw ", "dead", "slugs"],
    [null, null, "Week total", 951, null],
    [null, null, null, null, null],
    ["5/7", "B1-2", "straw mulch", "1,250", null],
    [null, "B1-1", "Straw", null, "forgot"],
    [july(8), "B1-1", "Straw", 0, null],
  ]);

  it("holds what was read for certain, and the rest as it stands", () => {
    expect(cellsOf(table)).toEqual([
      heads,
      [july(1), "B1-1", "Straw", 200, '=HYPERLINK("x")'],
      [july(2), "B1-2", "Straw", 235, null],
      [july(3), "B1-3", "Straw", 506, null],
      [july(4), "B1-4", "Straw", 0, null],
      [july(5), "B1-5", "Straw", 210, null],
      [july(6), "B1-1", "Straw", "dead", "slugs"],
      ["5/7", "B1-2", "straw mulch", "1,250", null],
      [null, "B1-1", "Straw", null, "forgot"],
      [july(8), "B1-1", "Straw", 0, null],
    ]);
  });

  it("lists every change, with the cell, what it was, what it became and why", () => {
    const done = table.changes.filter(({ became }) => became !== "left as it stands");
    expect(done).toEqual([
      change("D3", "0.235kg", "235", "Read as a number. A unit belongs in the heading."),
      change("D4", "506*", "506", "Read as a number. A mark belongs in a column of notes."),
      change("D5", "-", "0", "Read as 0."),
      change("A7", "6 July 2023", "2023-07-06", "Written as it was read."),
      change("B7", "B1 - 1", "B1-1", "Read as one name. Spell it one way."),
      change("C7", "straw", "Straw", "Read as one name. Spell it one way."),
      change("C8", "Week total, 951", "left out", "A row of totals or averages is left out. Keep it out of the list."),
      change("A9", "empty row", "left out", "An empty row is passed over."),
      change("Column date", "5 dates typed as text", "dates", "A text cannot be added up, or put in order, as one."),
      change(
        "Column grams",
        "1 number typed as text",
        "numbers",
        "A text cannot be added up, or put in order, as one.",
      ),
    ]);
  });

  it("lists what is in doubt with what to do, and guesses none of it", () => {
    const left = table.changes.filter(({ became }) => became === "left as it stands");
    expect(left.map(({ where, was }) => [where, was])).toEqual([
      ["A10", "5/7"],
      ["C10", "straw mulch"],
      ["D10", "1,250"],
      ["A11", "empty"],
      ["D11", "empty"],
    ]);
  });

  it("texts stay texts, whatever they look like", () => {
    expect(table.rows[0]?.[4]).toMatchObject({ kind: "text", content: '=HYPERLINK("x")' });
  });
});

function change(where: string, was: string, became: string, why: string) {
  return { where, was, became, why };
}

it("an empty date or name stands for the one above only when the grower says so", () => {
  const cells = [heads, straw(1, 200), [null, "B1-2", null, 210, null], [null, "B1-3", "Hay", 220, null]];
  expect(cellsOf(cleaned(cells)).at(2)).toEqual([null, "B1-2", null, 210, null]);
  const above = cleaned(cells, { blankIsAbove: true });
  expect(cellsOf(above).slice(2)).toEqual([
    [july(1), "B1-2", "Straw", 210, null],
    [july(1), "B1-3", "Hay", 220, null],
  ]);
  expect(above.changes.filter(({ was }) => was === "empty")).toEqual([
    change("A3", "empty", "2023-07-01", "You said: as above."),
    change("C3", "empty", "Straw", "You said: as above."),
    change("A4", "empty", "2023-07-01", "You said: as above."),
  ]);
});

it("a unit typed in the cells alone goes into the heading; a table without headings gets some", () => {
  const table = cleaned([
    ["B1", "3.1 kg"],
    ["B2", 2.9],
    ["B3", "2800 g"],
    ["B4", 3.3],
  ]);
  expect(cellsOf(table).slice(0, 4)).toEqual([
    ["Name 1", "Amount 2 (kg)"],
    ["B1", 3.1],
    ["B2", 2.9],
    ["B3", 2.8],
  ]);
  const one = cleaned([
    ["B1", "3.1 kg"],
    ["B2", 2.9],
    ["B4", 3.3],
  ]);
  expect(cellsOf(one)).toEqual([
    ["Name 1", "Amount 2 (kg)"],
    ["B1", 3.1],
    ["B2", 2.9],
    ["B4", 3.3],
  ]);
  expect(one.changes.slice(0, 2)).toEqual([
    change("A1", "no heading", "Name 1", "A column needs a heading."),
    change("B1", "no heading", "Amount 2 (kg)", "A column needs a heading."),
  ]);
});

it("days of no year stay as they are typed", () => {
  const days = cleaned([
    ["day", "grams"],
    ["1 July", 200],
    ["3 July", 210],
    ["5 July", 220],
  ]);
  expect(
    cellsOf(days)
      .slice(1)
      .map(([day]) => day),
  ).toEqual(["1 July", "3 July", "5 July"]);
});

it("an error value stays one, as a text, and is listed", () => {
  const table = cleaned([["grams"], [200], [{ error: "#N/A" }], [true], [210]]);
  expect(cellsOf(table)).toEqual([["grams"], [200], ["#N/A"], ["TRUE"], [210]]);
  expect(table.changes.map(({ where, was, became }) => [where, was, became])).toEqual([
    ["A3", "#N/A", "left as it stands"],
    ["A4", "TRUE", "left as it stands"],
  ]);
});
