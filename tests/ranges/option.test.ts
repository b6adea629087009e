import { expect, it } from "vitest";
import { cellText, missing, oneCell } from "../../src/ranges/option";
import { block, column } from "./column";

it("oneCell gives the cell, and an empty one for an omitted argument or a blank", () => {
  expect(oneCell(column([5]), "price")).toEqual({ cell: 5 });
  for (const omitted of [null, undefined, column([null]), column([" "])]) {
    expect(oneCell(omitted, "price")).toEqual({ cell: null });
  }
});

it("oneCell refuses a block, naming its size", () => {
  const refusal = { problem: "one-cell-wanted", argument: "price", rows: 1, columns: 2 };
  expect(oneCell(block([[1, null]]), "price")).toEqual(refusal);
});

it.each([
  [12.5, "12.5"],
  ["a ", "a "],
  [true, "TRUE"],
  [null, ""],
  [{ error: "#N/A" }, "#N/A"],
])("cellText of %j is %j", (cell, text) => {
  expect(cellText(cell)).toBe(text);
});

it("missing names the argument", () => {
  expect(missing("change")).toEqual({ problem: "missing-argument", argument: "change" });
});
