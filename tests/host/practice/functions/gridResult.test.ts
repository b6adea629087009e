import type { ArrayValueObject } from "@univerjs/engine-formula";
import { describe, expect, it } from "vitest";
import { gridError, gridResult } from "../../../../src/host/practice/functions/gridResult";
import { standInFunctions } from "../../../../src/host/practice/functions/standInFunctions";

const { Error: Refused } = standInFunctions(new Map());

/** The block that a result spills, as plain values. */
function spilled(result: unknown): unknown[][] {
  const block = gridResult(result) as ArrayValueObject;
  return block.getArrayValue().map((row) => row.map((cell) => cell?.getValue()));
}

describe("gridResult", () => {
  it.each([
    ["a block of one cell", [[0.25]], 0.25],
    ["a value alone", "Too few plants", "Too few plants"],
    ["a text that looks like a number", [["12"]], "12"],
    ["a text that looks like an error", [["#N/A is no answer"]], "#N/A is no answer"],
    ["FALSE", [[false]], false],
    ["a formatted number", [[{ type: "Double", basicValue: 0.441, numberFormat: "0.0%" }]], 0.441],
  ])("fills one cell with %s", (_what, result, expected) => {
    const value = gridResult(result);
    expect(value.isArray()).toBe(false);
    expect(value.getValue()).toBe(expected);
  });

  it("spills a block, with empty texts where the block is empty", () => {
    const table = [
      ["Change", 0.441],
      ["Change low", ""],
    ];
    expect(spilled(table)).toEqual(table);
  });

  it("keeps an error in its own cell of a block", () => {
    expect(spilled([[1], [new Refused("#VALUE!", "Can't read 'two'")]])).toEqual([[1], ["#VALUE!"]]);
  });

  it.each([
    ["NaN", Number.NaN],
    ["an infinity", Number.POSITIVE_INFINITY],
    ["a formatted NaN", [[{ type: "Double", basicValue: Number.NaN, numberFormat: "0.0%" }]]],
    ["null", null],
    ["undefined", undefined],
    ["a promise", Promise.resolve(1)],
    ["an empty block", []],
  ])("shows %s as #VALUE!", (_what, result) => {
    expect(gridResult(result).getValue()).toBe("#VALUE!");
  });
});

describe("gridError", () => {
  it.each([
    ["#N/A", "#N/A"],
    ["#VALUE!", "#VALUE!"],
    ["no code of the grid", "#VALUE!"],
  ])("shows %s as %s", (code, shown) => {
    const error = gridError(code);
    expect(error.isError()).toBe(true);
    expect(error.getValue()).toBe(shown);
  });
});
