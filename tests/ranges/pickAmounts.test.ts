import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { type AmountRules, readPickAmounts } from "../../src/ranges/pickAmounts";
import { found } from "../questions/range";

function answer(cells: readonly Cell[], rules: Partial<AmountRules> = {}) {
  return readPickAmounts(
    cells.map((cell) => [cell]),
    { counts: () => true, headingUnit: null, unit: null, zerosVerified: true, ...rules },
  );
}
function read(cells: readonly Cell[], rules: Partial<AmountRules> = {}) {
  const { values, missing, lost, readInto, ...rest } = found(answer(cells, rules));
  return { ...rest, values: [...values], missing: [...missing], lost: [...lost], readInto: [...readInto] };
}
const nothing = Number.NaN;

describe("readPickAmounts brings amounts into the unit asked for", () => {
  it("bare numbers are in the heading's unit", () => {
    const inKilograms = read([1500, "250 g", null, "1 kg"], { headingUnit: "g", unit: "kg" });
    expect(inKilograms).toMatchObject({ unit: "kg", values: [1.5, 0.25, nothing, 1], readInto: [1, 3] });
    expect(read([1.5, null], { headingUnit: "kg", unit: "kg" })).toMatchObject({ unit: "kg", values: [1.5, nothing] });
  });

  it("without one in the heading they are in the unit asked for, and without that as they stand", () => {
    expect(read([1500, "2 kg"], { unit: "g" })).toMatchObject({ unit: "g", values: [1500, 2000] });
    expect(read([1500], { headingUnit: "g" })).toMatchObject({ unit: "g", values: [1500] });
    expect(read([1500])).toMatchObject({ unit: null, values: [1500] });
  });

  it("a count has no unit: an amount with one is left out", () => {
    expect(read([12, "14", "200 g"], { unit: "count" })).toMatchObject({
      unit: null,
      values: [12, 14, nothing],
      missing: [[2, "unit-unclear"]],
    });
  });

  it.each([
    ["cm", "g"],
    ["g", "count"],
  ] as const)("a heading in %s and %s asked for do not go together", (headingUnit, unit) => {
    expect(answer([1], { headingUnit, unit })).toEqual({
      problem: "units-differ",
      first: "amounts",
      firstUnit: headingUnit,
      second: "unit",
      secondUnit: unit,
    });
  });
});

describe("readPickAmounts reads each cell by METHODS 4.1", () => {
  it("numbers, lost-words, none-words, notes, errors, nothing", () => {
    const cells = [300, "dead", "none", "slugs", { error: "#N/A" }, true, null, "506*", Number.POSITIVE_INFINITY];
    expect(read(cells)).toMatchObject({
      unit: null,
      values: [300, nothing, 0, nothing, nothing, nothing, nothing, 506, nothing],
      lost: [1],
      missing: [
        [3, "text"],
        [4, "error"],
        [5, "true-or-false"],
        [6, "empty"],
        [8, "error"],
      ],
      readInto: [7],
      zerosUnverified: 0,
    });
  });

  it("no row that does not count", () => {
    const counts = (row: number) => row !== 1;
    expect(read([300, "dead", 310], { counts })).toMatchObject({ values: [300, nothing, 310], lost: [], missing: [] });
    expect(read([0, 0], { counts, zerosVerified: false }).zerosUnverified).toBe(1);
  });

  it("zeros that the host may have made of empty cells are counted, a none-word is none of them", () => {
    const cells = [0, 5, 0, "none", "0", 0];
    expect(read(cells, { zerosVerified: false }).zerosUnverified).toBe(3);
    expect(read(cells).zerosUnverified).toBe(0);
  });

  it("a number that looks like a date is left out, unless a unit or a mark says that it is an amount", () => {
    expect(read([300, 45_112, 310, "45 kg", "45112*", 290, 280], { headingUnit: "g" })).toMatchObject({
      values: [300, nothing, 310, 45_000, 45_112, 290, 280],
      missing: [[1, "date"]],
    });
  });

  it("a bare number far from amounts with a unit of another kind is left out", () => {
    expect(read(["12 cm", "14 cm", "13 cm", 2000])).toMatchObject({
      unit: "cm",
      values: [12, 14, 13, nothing],
      missing: [[3, "unit-unclear"]],
    });
  });
});
