import { describe, expect, it } from "vitest";
import type { CellRange } from "../../src/nouns/cellRange";
import type { LookedOver } from "../../src/nouns/findings/lookedOver";
import { isProblem } from "../../src/nouns/problem";
import { lookOver } from "../../src/questions/lookOver";
import { block, column } from "../ranges/column";

function over(cells: CellRange): LookedOver {
  const found = lookOver({ cells });
  if (isProblem(found)) throw new Error(found.problem);
  return found;
}

it("the cells must be given, and what it cannot take is told by its argument", () => {
  const wanted = { problem: "missing-argument", argument: "cells" };
  expect(lookOver({})).toEqual(wanted);
  expect(lookOver({ cells: null })).toEqual(wanted);
  const cells = column([1]);
  expect(lookOver({ cells, kind: column(["plants"]) })).toMatchObject({ argument: "kind" });
  expect(lookOver({ cells, lowest_ok: column(["low"]) })).toMatchObject({ argument: "lowest_ok" });
  expect(lookOver({ cells, highest_ok: column(["high"]) })).toMatchObject({ argument: "highest_ok" });
});

it.each([
  ["amount", []],
  ["per plant", ["D5"]],
])("told %s, 600 among a hundred each is far in: %j", (kind, far) => {
  const found = lookOver({ cells: column([100, 110, 90, 105, 600]), kind: column([kind]) });
  expect(isProblem(found) || found.readings.map(({ place }) => place.cell)).toEqual(far);
});

it("tells of each column what it was read as; numbers where a day or an amount is certain", () => {
  const cells = [
    ["picked", "remarks", "plant", "weight (g)", "fruit"],
    ["2023-07-01", null, "B1", 200, 1],
    ["soon", "rain", "B2", "0.3 kg", "?"],
  ];
  const { columns, from } = over(block(cells));
  expect(from).toBe(1);
  // 2023-07-01 is day 45108 in Excel
  expect(columns).toEqual([
    {
      ...{ column: 1, kind: "date", heading: "picked", unit: null, unitInHeading: false },
      values: Float64Array.of(45_108, Number.NaN),
    },
    { column: 3, kind: "label", heading: "plant", unit: null, unitInHeading: false, values: null },
    {
      ...{ column: 4, kind: "amount", heading: "weight (g)", unit: "g", unitInHeading: true },
      values: Float64Array.of(200, 300),
    },
    {
      ...{ column: 5, kind: "amount", heading: "fruit", unit: null, unitInHeading: false },
      values: Float64Array.of(1, Number.NaN),
    },
  ]);
});

it("days of which none names its year have no numbers", () => {
  const { columns } = over(column(["13 July", "14 July", "15 July"]));
  expect(columns).toMatchObject([{ kind: "date", values: null }]);
});

describe("one structure keeps every reading with its place", () => {
  it("in the sheet's order; a cell with two readings needs one look", () => {
    const found = over(column(["grams", "0.3 kg", 300, "506*", "slugs", 310, null, 9e9], { argument: "cells" }));
    expect(found.readings.map(({ kind, place, text }) => [kind, place.cell, text])).toEqual([
      ["unit-converted", "D2", "0.3 kg"],
      ["mark-removed", "D4", "506*"],
      ["unreadable", "D5", "slugs"],
      ["not-recorded", "D7", ""],
      ["odd-size", "D8", "9000000000"],
    ]);
    expect(found).toMatchObject({ cells: 7, numbers: 5, needLook: 3 });
    expect(found.cautions()).toEqual([{ caution: "C14", count: 2 }]);
  });

  it("zeros that may be empty cells raise C15", () => {
    expect(over(column([0, 5, 0], { zerosVerified: false })).cautions()).toEqual([{ caution: "C15", zeros: 2 }]);
  });

  it("a plant noted as lost needs no other amount", () => {
    const cells = [
      ["plant", "fruit", "grams"],
      ["B1", 1, 200],
      ["B2", null, "lost"],
      ["B3", null, 210],
    ];
    expect(over(block(cells)).readings.map(({ kind, place }) => [kind, place.cell])).toEqual([
      ["lost", "F3"],
      ["not-recorded", "E4"],
    ]);
  });

  it("of a lost plant's row, words in place of amounts and an empty date or name are listed all the same", () => {
    const cells = [
      ["date", "plant", "mulch", "fruit", "grams"],
      ["2023-07-01", "B1", "Straw", 1, 200],
      [null, "B2", "Straw", "forgot", "lost"],
      ["2023-07-03", "B3", null, null, "dead"],
      ["2023-07-04", "B4", "Straw", 3, 210],
    ];
    expect(over(block(cells)).readings.map(({ kind, place, text }) => [kind, place.cell, text])).toEqual([
      ["not-recorded", "D3", ""],
      ["not-recorded", "G3", "forgot"],
      ["lost", "H3", "lost"],
      ["not-recorded", "F4", ""],
      ["lost", "H4", "dead"],
    ]);
  });

  it("along a row by column, whatever is found first; a text without the spaces round it", () => {
    const cells = [
      ["fruit", "grams"],
      [-1, " slugs "],
      [2, 400],
    ];
    expect(over(block(cells)).readings.map(({ kind, place, text }) => [kind, place.cell, text])).toEqual([
      ["odd-size", "D2", "-1"],
      ["unreadable", "E2", "slugs"],
    ]);
  });

  it("a row entered twice is noted at its first cell that is read, with the row it is like", () => {
    const cells = [
      ["remarks", "picked", "plant", "grams"],
      ["", "2023-07-01", "B1", 200],
      ["", "2023-07-01", "B2", 210],
      ["", "2023-07-01", "B1", 200],
    ];
    expect(over(block(cells)).readings).toMatchObject([
      { kind: "possible-double", place: { cell: "E4" }, text: "2023-07-01", like: { cell: "E2" } },
    ]);
  });

  it("totals per plant, each with its own name and no dates, are judged as such", () => {
    const rows = [100, 110, 90, 105, 600].map((grams, at) => [`B${at}`, grams]);
    expect(over(block(rows)).readings.map(({ kind, place }) => [kind, place.cell])).toEqual([["odd-size", "E5"]]);
  });

  it("equal rows are doubles only beside a date or two names", () => {
    const twice = [
      ["Straw", 3],
      ["Straw", 3],
      ["Bare", 4],
      ["Bare", 5],
    ];
    expect(over(block(twice)).readings).toEqual([]);
    const named = [
      ["B1", "Straw", 3],
      ["B1", "Straw", 3],
      ["B2", "Bare", 4],
      ["B2", "Bare", 5],
    ];
    expect(over(block(named)).readings.map(({ kind, place }) => [kind, place.cell])).toEqual([
      ["possible-double", "D2"],
    ]);
  });
});
