import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { isDay, serialOf } from "../../src/nouns/day";
import { readDate } from "../../src/ranges/readDate";
import { anyCell } from "./anyCell";

/** A reading in short: "2023-7-5" is certain, "-7-5" lacks its year, two days are either of them. */
function said(cell: Cell): string {
  const meaning = readDate(cell);
  if (meaning.means === "no-date") return meaning.why;
  const days = meaning.means === "day" ? [meaning.day] : [meaning.dayFirst, meaning.monthFirst];
  return days.map(({ year, month, day }) => `${year ?? ""}-${month}-${day}`).join(" or ");
}

describe("certain dates (METHODS 3)", () => {
  it.each<[Cell, string]>([
    [45_112, "2023-7-5"],
    [45_112.75, "2023-7-5"],
    ["45112", "2023-7-5"],
    [" 45112.5 ", "2023-7-5"],
    [10_959, "1930-1-1"],
    [73_050.9, "2099-12-31"],
    ["2023-06-24", "2023-6-24"],
    ["2023-6-4", "2023-6-4"],
    ["2023/06/04", "2023-6-4"],
    ["2023.06.04", "2023-6-4"],
    ["2023-06-04T08:30:00.000Z", "2023-6-4"],
    ["2023-06-04 8:30", "2023-6-4"],
    ["45112.75", "2023-7-5"],
    ["20230604", "2023-6-4"],
    [20_230_604, "2023-6-4"],
    [19_300_101, "1930-1-1"],
    [20_991_231, "2099-12-31"],
    ["24/6/2023", "2023-6-24"],
    ["6/24/2023", "2023-6-24"],
    ["24.6.23", "2023-6-24"],
    ["24-06-2023", "2023-6-24"],
    ["24 / 6 / 2023", "2023-6-24"],
    ["24/6", "-6-24"],
    ["24.6.", "-6-24"],
    ["5/5", "-5-5"],
    ["5/5/30", "1930-5-5"],
    ["5/5/29", "2029-5-5"],
    ["29/2", "-2-29"],
    ["5 July", "-7-5"],
    ["July 5th", "-7-5"],
    ["5th of July", "-7-5"],
    ["5TH JULY 2023", "2023-7-5"],
    ["the 5th of Jul", "-7-5"],
    ["Sept. 3", "-9-3"],
    ["Jul 5, 2023", "2023-7-5"],
    ["July 5th, '23", "2023-7-5"],
    ["5-Jul-23", "2023-7-5"],
    ["5-Jul", "-7-5"],
    ["5Jul2023", "2023-7-5"],
    ["5 Jul '23", "2023-7-5"],
    ["5 July, 2023", "2023-7-5"],
    ["2023 Jul 5", "2023-7-5"],
    ["Mon 3 July", "-7-3"],
    ["Wednesday, 5 July 2023", "2023-7-5"],
    ["Sat. 24/6", "-6-24"],
    ["5\u00A0July\u00A02023", "2023-7-5"],
    ["24\u201106\u20112023", "2023-6-24"],
  ])("%s is %s", (cell, day) => {
    expect(said(cell)).toBe(day);
  });
});

it.each([
  ["5/7", "-7-5 or -5-7"],
  ["05/07/2023", "2023-7-5 or 2023-5-7"],
  ["5.7.", "-7-5 or -5-7"],
  ["5.7.23", "2023-7-5 or 2023-5-7"],
  ["Wed 5/7", "-7-5 or -5-7"],
])("doubtful, with both readings: %s is %s", (text, days) => {
  expect(said(text)).toBe(days);
});

describe("no date", () => {
  it.each<[Cell]>([
    ["5.7"],
    ["3rd"],
    ["July"],
    ["July 2023"],
    ["Jul-23"],
    ["w/c 10 July"],
    ["10-12 July"],
    ["July 10-12"],
    ["5 July-12"],
    ["5 July / 6 July"],
    ["5/7 (rain)"],
    ["24/6?"],
    ["13/13"],
    ["29/2/2023"],
    ["30 Feb"],
    ["2023-13-01"],
    ["2023-06/04"],
    ["5/7.23"],
    ["5/7/1850"],
    ["5/7/2100"],
    ["00/7"],
    ["5 ju"],
    ["5 juli"],
    ["money 5/7"],
    ["177 g"],
    ["1/2/3/4"],
    ["lost"],
    ["99999"],
    [507],
    [73_051],
    [10_958.9],
    [-45_112],
    [20_231_304],
    [20_230_604.5],
    [19_291_231],
    [21_000_101],
    [1e21],
    [Number.NaN],
    [Number.POSITIVE_INFINITY],
    [true],
  ])("%s", (cell) => {
    expect(said(cell)).toBe("not-a-date");
  });

  it.each<[string, Cell]>([
    ["empty", null],
    ["empty", "  "],
    ["error", { error: "#N/A" }],
  ])("%s", (why, cell) => {
    expect(said(cell)).toBe(why);
  });
});

it("tells a number from a text, and no day of a number that is none", () => {
  const day = { means: "day", day: { year: 2023, month: 7, day: 5 }, order: null };
  expect(readDate(45_112)).toEqual({ ...day, read: "number" });
  expect(readDate("45112")).toEqual({ ...day, read: "text" });
  expect(readDate(20_230_705)).toEqual({ ...day, read: "number" });
  expect(readDate(507)).toEqual({ means: "no-date", why: "not-a-date" });
});

it("tells the order that a text shows", () => {
  const orders = ["24/6", "6/24/23", "5/5", "5 July", "2023-07-05"].map((text) => readDate(text));
  expect(orders.map((meaning) => meaning.means === "day" && meaning.order)).toEqual([
    "day-first",
    "month-first",
    null,
    null,
    null,
  ]);
});

it("any cell: no exception, and every day is one of the calendar", () => {
  fc.assert(
    fc.property(anyCell, (cell) => {
      const meaning = readDate(cell);
      if (meaning.means === "no-date") return;
      const days = meaning.means === "day" ? [meaning.day] : [meaning.dayFirst, meaning.monthFirst];
      expect(days.every((day) => isDay(day) && Number.isFinite(serialOf({ ...day, year: day.year ?? 2000 })))).toBe(
        true,
      );
    }),
    { numRuns: 5000, seed: 11 },
  );
});
