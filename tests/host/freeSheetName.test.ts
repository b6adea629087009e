import { expect, it } from "vitest";
import { freeSheetName } from "../../src/host/freeSheetName";

it.each([
  ["Trial plan", [], "Trial plan"],
  ["Trial plan", ["Trial plan"], "Trial plan 2"],
  ["Trial plan", ["TRIAL PLAN", "trial plan 2"], "Trial plan 3"],
  ["Straw: 50/50? [new]", [], "Straw 50 50 new"],
  ["'quoted'", [], "quoted"],
  ["' 'quoted' '", [], "quoted"],
  [`${"a".repeat(30)}'s bed`, [], "a".repeat(30)],
  ["'*'", [], "Sheet"],
  ["Anna's bed", ["Anna's bed"], "Anna's bed 2"],
  ["history", [], "history 2"],
  ["  ", [], "Sheet"],
  ["a".repeat(40), [], "a".repeat(31)],
  ["a".repeat(40), ["a".repeat(31)], `${"a".repeat(29)} 2`],
])("%s beside %j is %s", (wanted, taken, name) => {
  expect(freeSheetName(wanted, taken)).toBe(name);
});

it("cuts no character in halves", () => {
  expect(freeSheetName(`${"a".repeat(30)}🍓`, [])).toBe("a".repeat(30));
});
