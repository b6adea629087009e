import { expect, it } from "vitest";
import { headingOf } from "../../src/ranges/headingOf";

it.each([
  ["Straw", "Straw"],
  ["  Bare   soil ", "Bare soil"],
  ["Straw (g)", "Straw (g)"],
  ["Dead hedge mulch", "Dead hedge mulch"],
  ["3 plants a bag", "3 plants a bag"],
  ["lost 2 fruit", "lost 2 fruit"],
])("headingOf %j is %j", (cell, heading) => {
  expect(headingOf(cell)).toBe(heading);
});

it.each([
  ["506"],
  ["506*"],
  ["1,250"],
  ["2½ lb"],
  ["15%"],
  ["lost"],
  ["Dead (slugs)"],
  ["-"],
  ["none"],
  ["not weighed"],
  ["n/a"],
  [""],
  [" "],
])("headingOf the text %j is null", (cell) => {
  expect(headingOf(cell)).toBeNull();
});

it.each([[2023], [true], [null], [undefined], [{ error: "#N/A" }]])(
  "headingOf %j, which is no text, is null",
  (cell) => {
    expect(headingOf(cell)).toBeNull();
  },
);
