import { expect, it } from "vitest";
import { placeOf } from "../../src/ranges/placeOf";
import { block, column } from "./column";

it("placeOf names the sheet's cell when the address is known", () => {
  expect(placeOf(column([1, 2, 3]), 2)).toEqual({ argument: "usual", row: 3, column: null, cell: "D3" });
});

it("placeOf counts row by row within a block", () => {
  const range = block([
    [1, 2, 3],
    [4, 5, 6],
  ]);
  expect(placeOf(range, 4)).toEqual({ argument: "usual", row: 2, column: 2, cell: "E2" });
});

it("placeOf gives row and column alone when no address is known", () => {
  expect(placeOf(block([[1, 2]], { corner: null }), 1)).toEqual({ argument: "usual", row: 1, column: 2, cell: null });
});
