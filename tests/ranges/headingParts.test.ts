import { expect, it } from "vitest";
import { headingParts } from "../../src/ranges/headingParts";

it.each([
  ["Straw (g)", "Straw", "g"],
  ["Straw [kg per plant]", "Straw", "kg"],
  ["Height (in)", "Height", "in"],
  ["Straw (kg/plant)", "Straw", "kg"],
  ["(g)", null, "g"],
  ["grams", null, "g"],
  ["kg/plant", null, "kg"],
  ["Grams per plant", null, "g"],
  ["Weight kg", "Weight kg", "kg"],
  ["Straw, lb", "Straw, lb", "lb"],
  ["Yield kg per m2", "Yield kg per m2", "kg"],
  ["Straw", "Straw", null],
  ["Straw (deep)", "Straw (deep)", null],
  ["What went in", "What went in", null],
  ["G", "G", null],
  ["Plot M", "Plot M", null],
  ["Straw 3 feet", "Straw 3 feet", null],
  ["Plants per m", "Plants per m", null],
  [" Straw (g) ", "Straw", "g"],
  ["Straw (g) north", "Straw (g) north", null],
  ["kg a plant", null, "kg"],
  ["Grams each", null, "g"],
  ["Kilos sold", "Kilos sold", null],
  ["Straw kg north", "Straw kg north", null],
  ["Brown paper, g", "Brown paper, g", "g"],
  ["Perlite, g", "Perlite, g", "g"],
  ["Weight KG", "Weight KG", "kg"],
  ["()", "()", null],
  ["", "", null],
  [`${"a".repeat(196)} (g)`, "a".repeat(196), "g"],
  [`${"a".repeat(197)} (g)`, `${"a".repeat(197)} (g)`, null],
  ["Harvest g/plant and kg", "Harvest g/plant and kg", null],
])("headingParts of %j: name %j, unit %j", (heading, name, unit) => {
  expect(headingParts(heading)).toEqual({ name, unit });
});

// a reader that goes back over the text again and again would outlast the runner's time limit
it("headingParts reads a heading of a million characters once", () => {
  for (const piece of ["(", "( ", " g", "[g]", ") "]) {
    expect(headingParts(`Straw ${piece.repeat(300_000)}`).name).toMatch(/^Straw/);
  }
});
