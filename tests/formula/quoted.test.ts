import { expect, it } from "vitest";
import { quoted, quotedSheet } from "../../src/formula/quoted";

it("doubles the quotes inside a text", () => {
  expect(quoted('so-called "straw"')).toBe('"so-called ""straw"""');
});

it.each([
  ["Mulch", "Mulch"],
  ["My sheet", "'My sheet'"],
  ["This year's", "'This year''s'"],
  ["2023", "'2023'"],
  ["AB12", "'AB12'"],
  ["R1C1", "'R1C1'"],
  ["Überblick", "Überblick"],
])("sheet %s is written %s", (name, written) => {
  expect(quotedSheet(name)).toBe(written);
});
