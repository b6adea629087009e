import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { dayOf } from "../../src/nouns/day";
import { readDates } from "../../src/ranges/readDates";
import { anyCell } from "./anyCell";

function read(...cells: readonly Cell[]): readonly string[] {
  const { entryOf, yearsKnown } = readDates(cells);
  return cells.map(entryOf).map((entry) => {
    if (entry.kind === "unclear") return entry.why;
    const { year, month, day } = dayOf(entry.serial);
    return `${yearsKnown ? year : ""}-${month}-${day} ${entry.read}`;
  });
}

describe("readDates lets the column settle what one cell leaves open (METHODS 3)", () => {
  it("one order shown and none other: the doubtful ones are read in it", () => {
    expect(read("24/6/23", "5/7/23")).toEqual(["2023-6-24 text", "2023-7-5 order-of-column"]);
    expect(read("6/24/23", "5/7/23")).toEqual(["2023-6-24 text", "2023-5-7 order-of-column"]);
  });

  it("no order shown, or both: unclear, with both readings", () => {
    expect(read("5/7", "3/7", "5/5")).toEqual(["order", "order", "-5-5 year-of-column"]);
    expect(read("24/6/23", "6/24/23", "5/7/23")).toEqual(["2023-6-24 text", "2023-6-24 text", "order"]);
    expect(readDates(["5/7"]).entryOf("5/7")).toMatchObject({
      readings: [
        { year: null, month: 7, day: 5 },
        { year: null, month: 5, day: 7 },
      ],
    });
  });

  it("dates of the sheet and ISO texts show no order", () => {
    expect(read(45_112, "2023-06-24", "5/7")).toEqual(["2023-7-5 number", "2023-6-24 text", "order"]);
  });

  it("a year-less day takes its year from the rest, or none", () => {
    expect(read("2023-06-24", "5 July")).toEqual(["2023-6-24 text", "2023-7-5 year-of-column"]);
    expect(read("2023-06-24", "2024-08-30", "5 July")).toEqual(["2023-6-24 text", "2024-8-30 text", "year"]);
    expect(read("24 June", "5 July")).toEqual(["-6-24 year-of-column", "-7-5 year-of-column"]);
  });

  it("a year-less day that fits two seasons as well is unclear, and keeps its day", () => {
    const { entryOf } = readDates(["2023-06-24", "2024-08-30", "5 July"]);
    expect(entryOf("5 July")).toEqual({ kind: "unclear", why: "year", readings: [{ year: null, month: 7, day: 5 }] });
  });

  it("cells that are no dates say why", () => {
    expect(read(null, "3rd", { error: "#REF!" }, 45_112)).toEqual(["empty", "not-a-date", "error", "2023-7-5 number"]);
  });
});

it("errors that are alike, each a thing of its own, are told alike; a cell from elsewhere is read by the column", () => {
  const { entryOf } = readDates([{ error: "#N/A" }, { error: "#N/A" }, "24/6/23"]);
  expect(entryOf({ error: "#N/A" })).toEqual({ kind: "unclear", why: "error", readings: [] });
  expect(entryOf("5/7/23")).toEqual({ kind: "date", serial: 45_112, read: "order-of-column" });
});

it("any column: every cell is a whole day or unclear", () => {
  const cell = fc.oneof(anyCell, fc.constantFrom("5/7", "24/6", "6/24", "5 July", "2023-06-24", "29 Feb", "1 Jan"));
  fc.assert(
    fc.property(fc.array(cell, { maxLength: 30 }), (cells) => {
      const entries = cells.map(readDates(cells).entryOf);
      expect(entries.every((entry) => entry.kind === "unclear" || Number.isInteger(entry.serial))).toBe(true);
    }),
    { numRuns: 3000, seed: 12 },
  );
});
