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
