import { expect, it } from "vitest";
import { readUnit } from "../../src/ranges/readUnit";
import { column } from "./column";

it.each([
  ["kg", "kg"],
  ["Kilos", "kg"],
  [" lbs. ", "lb"],
  ["COUNT", "count"],
  ["feet", "ft"],
])("readUnit reads %s as %s", (typed, unit) => {
  expect(readUnit(column([typed]), "g")).toBe(unit);
});

it("gives the fallback for an omitted argument and an empty cell", () => {
  expect(readUnit(null, "g")).toBe("g");
  expect(readUnit(column([null]), "g")).toBe("g");
});

// the units of METHODS 8.12
it.each([["bushel"], [3]])("refuses %s with the list of units", (typed) => {
  const allowed = ["g", "kg", "lb", "oz", "count", "ml", "l", "cm", "m", "in", "ft"];
  expect(readUnit(column([typed]), "g")).toMatchObject({ problem: "unknown-choice", argument: "unit", allowed });
});

it("refuses several cells", () => {
  expect(readUnit(column(["g", "kg"]), "g")).toMatchObject({ problem: "one-cell-wanted", argument: "unit" });
});
