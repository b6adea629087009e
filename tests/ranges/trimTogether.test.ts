import { expect, it } from "vitest";
import { trimTogether } from "../../src/ranges/trimTogether";
import { block, column } from "./column";

it("trimTogether drops the rows that are empty in all ranges at the end", () => {
  const [first, second] = trimTogether([column([1, null, null, null]), column(["a", "b", "", " "])]);
  expect(first?.cells).toEqual([[1], [null]]);
  expect(second?.cells).toEqual([["a"], ["b"]]);
});

it("trimTogether keeps empty rows between filled ones, and a row that is filled in part", () => {
  const [range] = trimTogether([
    block([
      [1, null],
      [null, null],
      [null, 2],
      [null, null],
    ]),
  ]);
  expect(range?.cells).toEqual([
    [1, null],
    [null, null],
    [null, 2],
  ]);
});

it("trimTogether lets B2:B1000 stand beside a shorter range", () => {
  const long = column([1, 2, ...Array.from({ length: 997 }, () => null)]);
  const [first, second] = trimTogether([long, column(["a", "b"])]);
  expect([first?.cells.length, second?.cells.length]).toEqual([2, 2]);
});

it("trimTogether leaves no row of empty ranges", () => {
  expect(trimTogether([column([null, null])])[0]?.cells).toEqual([]);
  expect(trimTogether([])).toEqual([]);
});
