import { describe, expect, it } from "vitest";
import { near } from "../near";
import handbook from "../reference/handbook.json";
import { at, cell, labels, matrix, number, refused } from "./call";
import { demoPlants, mulch } from "./demo";

const plants = [4, 6, "lost", 5, "died – slugs", 3];

it("shows the average per plant, and nine labels in METHODS' order", () => {
  expect(cell("PERPLANT", plants)).toBe(4.5);
  const table = matrix("PERPLANT", plants, "table");
  expect(labels(table)).toEqual([
    "Per plant",
    "Plants set out",
    "Plants lost",
    "Not recorded",
    "Plants counted",
    "Total",
    "Per surviving plant",
    "Per plant set out",
    "Lost plants were",
  ]);
  expect(table.map(([, value]) => value)).toEqual([4.5, 6, 2, 0, 4, 18, 4.5, 3, "left out"]);
  for (const [label, value] of table) expect(cell("PERPLANT", plants, label)).toBe(value);
});

it("'count as zero' changes the average and who is counted", () => {
  const table = matrix("PERPLANT", plants, "table", null, "COUNT as  zero");
  expect(table.map(([, value]) => value)).toEqual([3, 6, 2, 0, 6, 18, 4.5, 3, "counted as zero"]);
});

it("a plant not recorded is never zero, and leaves the figure per plant set out unknown", () => {
  for (const rule of ["leave out", "count as zero"]) {
    const table = matrix("PERPLANT", [4, "not weighed", "lost", "forgot", 5, 6], "table", 6, rule);
    const average = rule === "leave out" ? 5 : 3.75;
    expect(table.map(([, value]) => value).slice(0, 8)).toEqual([
      average,
      6,
      1,
      2,
      rule === "leave out" ? 3 : 4,
      15,
      5,
      "not known: 2 not recorded",
    ]);
  }
});

describe("all lost", () => {
  const lost = at("Trial!C2:C4", ["lost", "dead", "stolen"]);

  it("'count as zero' is 0, 'leave out' has no average", () => {
    expect(cell("PERPLANT", lost, null, null, "count as zero")).toBe(0);
    for (const show of [null, "Per plant"]) {
      const { code, message } = refused("PERPLANT", lost, show);
      expect(code).toBe("#N/A");
      expect(message).toContain("C2:C4");
    }
  });

  it("#N/A holds for the average alone; what the cells do say can be shown", () => {
    expect(cell("PERPLANT", lost, "Plants lost")).toBe(3);
    expect(cell("PERPLANT", lost, "Plants set out")).toBe(3);
    expect(cell("PERPLANT", lost, "Total")).toBe(0);
    expect(cell("PERPLANT", lost, "Per plant set out")).toBe(0);
    const table = matrix("PERPLANT", lost, "table");
    expect(typeof table[0]?.[1]).toBe("string");
    expect(table[2]).toEqual(["Plants lost", 3]);
  });
});

describe("one season total for all plants", () => {
  const unknown = "a total does not say";

  it.each(["leave out", "count as zero"])("is shared by all plants set out, whatever the rule: %s", (rule) => {
    const table = matrix("PERPLANT", 120, "table", 6, rule);
    const was = rule === "leave out" ? "left out" : "counted as zero";
    expect(table.map(([, value]) => value)).toEqual([20, 6, unknown, unknown, 6, 120, unknown, 20, was]);
  });

  it("with a heading, in one cell, or with the plants' labels", () => {
    expect(cell("PERPLANT", ["Straw", 120], null, 6)).toBe(20);
    expect(cell("PERPLANT", [[120]], null, ["B1", "B2", "B3", "B1", "b2", " B3 "])).toBe(40);
  });

  it("planted as text is the number it says", () => {
    expect(cell("PERPLANT", 120, null, "6")).toBe(20);
    expect(cell("PERPLANT", 120, null, [["6"]])).toBe(20);
    expect(refused("PERPLANT", 120, null, "six").code).toBe("#VALUE!");
  });

  it("one number for one plant is that plant", () => {
    expect(cell("PERPLANT", 7, "Per surviving plant", 1)).toBe(7);
    expect(cell("PERPLANT", 7, "Plants lost", 1)).toBe(0);
  });

  it("the per-plant averages that totals hide (METHODS 6.5): 120 from 6, 110 from 5", () => {
    const [six, five] = [number("PERPLANT", 120, null, 6), number("PERPLANT", 110, null, 5)];
    near("change", number("UPDOWN", six, five), 0.1);
  });
});

describe("planted", () => {
  it("must be as many as there are numbers, lost and not recorded ones", () => {
    expect(cell("PERPLANT", plants, null, 6)).toBe(4.5);
    const { code, message } = refused("PERPLANT", [1, 2, 3, 4, 5], null, 6);
    expect(code).toBe("#VALUE!");
    expect(message).toMatch(
      /^5 numbers for 6 plants\. Pick totals\? Add them first\. A plant not weighed\? Type .not weighed.\.$/,
    );
  });

  it("empty cells at the end are not there, so they are not plants", () => {
    expect(refused("PERPLANT", [4, 5, null, null], null, 4).message).toMatch(/^2 numbers for 4 plants/);
    expect(cell("PERPLANT", [4, null, 5, null], null, 3)).toBe(4.5);
  });

  it("may be the range of plant labels, each counted once; a repeated one is a caution", () => {
    expect(cell("PERPLANT", [4, 5], null, ["B1-1", "B1-2"])).toBe(4.5);
    expect(refused("PERPLANT", [4, 5, 6], null, ["B1-1", "B1 - 1", "B1-2"]).message).toMatch(/^3 numbers for 2 plants/);
    expect(cell("PERPLANT", 12, "cautions", ["B1-1", "B1-1", "B1-2"])).toMatch(/in here more than once/);
    expect(cell("PERPLANT", 12, "cautions", ["B1-1", "B1-2"])).not.toMatch(/more than once/);
  });
});

it("Marlpit Corner: plants, totals and averages of the four mulches (METHODS 11)", () => {
  const { counted, total, average, grassLostAsZero } = handbook.cases.demoMulches;
  const names = [...new Set(demoPlants.map(({ treatment }) => treatment))];
  for (const [index, name] of names.entries()) {
    expect(cell("PERPLANT", mulch(name), "Plants counted")).toBe(counted[index]);
    expect(cell("PERPLANT", mulch(name), "Total")).toBe(total[index]);
    near(name, number("PERPLANT", mulch(name), null, 8), average[index] ?? 0, { absolute: 0.05 });
  }
  const asZero = number("PERPLANT", mulch("Grass clippings"), null, 8, "count as zero");
  near("grass, lost as zero", asZero, grassLostAsZero, { absolute: 0.05 });
});

it.each([
  [[3, 4, -1], "row 3"],
  [at("Trial!B2:B4", [3, 4, -1]), "B4"],
])("a harvest below zero is refused with its place", (amounts, place) => {
  const { code, message } = refused("PERPLANT", amounts);
  expect(code).toBe("#VALUE!");
  expect(message.toLowerCase()).toContain(place.toLowerCase());
});
