import { expect, it } from "vitest";
import { missing } from "../../src/ranges/option";
import { readWhole } from "../../src/ranges/readWhole";
import { column } from "./column";

const rule = { argument: "treatments", low: 2, high: 20, fallback: 2 };

it("readWhole gives a whole number within its limits", () => {
  expect([2, 20, "6"].map((cell) => readWhole(column([cell]), rule))).toEqual([2, 20, 6]);
});

it.each([1, 21, 2.5, -3])("readWhole refuses %d, naming the limits", (given) => {
  expect(readWhole(column([given]), rule)).toEqual({
    problem: "not-whole",
    argument: "treatments",
    given,
    low: 2,
    high: 20,
  });
});

it("readWhole without an upper limit stops where whole numbers are no longer exact", () => {
  const open = { ...rule, high: null };
  expect(readWhole(column([1e9]), open)).toBe(1e9);
  expect(readWhole(column([1e300]), open)).toMatchObject({ problem: "not-whole", high: null });
});

it("readWhole gives the fallback for an omitted argument and hands on readNumber's Problems", () => {
  expect(readWhole(null, rule)).toBe(2);
  expect(readWhole(undefined, { ...rule, fallback: missing("treatments") })).toEqual(missing("treatments"));
  expect(readWhole(column(["many"]), rule)).toMatchObject({ problem: "not-a-number", given: "many" });
});
