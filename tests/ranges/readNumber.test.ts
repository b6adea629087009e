import { expect, it } from "vitest";
import { missing } from "../../src/ranges/option";
import { bareNumber, readNumber } from "../../src/ranges/readNumber";
import { column } from "./column";

it.each([
  [2.5, 2.5],
  [-1, -1],
  ["6", 6],
  ["2,5", 2.5],
])("readNumber of %j is %d", (cell, number) => {
  expect(readNumber(column([cell]), "price", null)).toBe(number);
});

it.each([["six"], ["1,250"], ["6 kg"], ["15%"], [true], [{ error: "#N/A" }], [Number.NaN]])(
  "readNumber refuses %j",
  (cell) => {
    expect(readNumber(column([cell]), "price", null)).toMatchObject({ problem: "not-a-number", argument: "price" });
  },
);

it("readNumber gives the fallback for an omitted argument, which may be a Problem", () => {
  expect(readNumber(null, "price", 7)).toBe(7);
  expect(readNumber(column([null]), "price", missing("price"))).toEqual(missing("price"));
});

it("readNumber refuses a block", () => {
  expect(readNumber(column([1, 2]), "price", null)).toMatchObject({ problem: "one-cell-wanted", rows: 2 });
});

it("bareNumber is null for a doubtful number and for one with a unit", () => {
  expect(["506", "1,250", "6 g"].map(bareNumber)).toEqual([506, null, null]);
});
