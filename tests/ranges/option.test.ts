import { expect, it } from "vitest";
import { missing, oneCell } from "../../src/ranges/option";
import { block, column } from "./column";

it("oneCell gives the cell, and an empty one for an omitted argument or a blank", () => {
  expect(oneCell(column([5]), "price")).toEqual({ cell: 5 });
  for (const omitted of [null, undefined, column([null]), column([" "]), block([])]) {
    expect(oneCell(omitted, "price")).toEqual({ cell: null });
  }
});

it("oneCell refuses a block, naming its size", () => {
  const refusal = { problem: "one-cell-wanted", argument: "price", rows: 1, columns: 2 };
  expect(oneCell(block([[1, null]]), "price")).toEqual(refusal);
});

it("missing names the argument", () => {
  expect(missing("change")).toEqual({ problem: "missing-argument", argument: "change" });
});
