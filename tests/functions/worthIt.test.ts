import { describe, expect, it } from "vitest";
import { near } from "../near";
import moneyLeft from "../reference/moneyLeft.json";
import { cell, labels, matrix, number, refused } from "./call";

const { cases: reference } = moneyLeft;

it("the answer is the money left per plant, and the labels are METHODS' in their order", () => {
  const { usual, new: tried, price, extra_cost } = reference.separate;
  const table = matrix("WORTHIT", usual, tried, price, extra_cost, "table", null, 120);
  expect(labels(table)).toEqual([
    "What it says",
    "Extra per plant",
    "Worth per plant",
    "Money left per plant",
    "Money left, low",
    "Money left, high",
    "Cost of each extra unit",
    "Break-even extra",
    "Break-even change",
    "For the next planting, low",
    "For the next planting, middle",
    "For the next planting, high",
  ]);
  const left = number("WORTHIT", usual, tried, price, extra_cost);
  expect(left).toBe(number("WORTHIT", usual, tried, price, extra_cost, "Money left per plant"));
});

describe.each(Object.entries(reference))("%s, by R", (name, known) => {
  const how = name === "pairs" ? "pairs" : null;
  const shown = (label: string, next: number | null = null) =>
    number("WORTHIT", known.usual, known.new, known.price, known.extra_cost, label, how, next);

  it.each([
    ["Extra per plant", known.extra],
    ["Worth per plant", known.worth],
    ["Money left per plant", known.left],
    ["Money left, low", known.low],
    ["Money left, high", known.high],
    ["Break-even extra", known.break_even],
    ["Break-even change", known.break_even_change],
  ])("%s", (label, expected) => {
    near(label, shown(label), expected, { relative: 1e-11, absolute: 1e-12 });
  });

  it("the next planting is so many times as much", () => {
    near("low", shown("For the next planting, low", 250), 250 * known.low, { relative: 1e-11 });
    near("middle", shown("For the next planting, middle", 250), 250 * known.left, { relative: 1e-11 });
    near("high", shown("For the next planting, high", 250), 250 * known.high, { relative: 1e-11 });
  });

  it("says pays or does not pay only when the whole range does", () => {
    const expected = known.low > 0 ? "Pays" : known.high < 0 ? "Does not pay" : "May or may not pay";
    expect(cell("WORTHIT", known.usual, known.new, known.price, known.extra_cost, "What it says", how)).toBe(expected);
  });
});

it("each extra unit costs its share, by R", () => {
  const { usual, new: tried, price, extra_cost, cost_of_extra } = reference.pays;
  const cost = number("WORTHIT", usual, tried, price, extra_cost, "Cost of each extra unit");
  near("cost", cost, cost_of_extra, { relative: 1e-12 });
});

describe("two single averages", () => {
  it("have no range, and what they say is of these averages only", () => {
    expect(cell("WORTHIT", 3, 4.2, 2.5, 1.1, "What it says")).toBe("On these averages it pays");
    expect(cell("WORTHIT", 3, 3.2, 2.5, 1.1, "What it says")).toBe("On these averages it does not pay");
    expect(cell("WORTHIT", 3, 4.2, 2.5, 1.1, "Money left, low")).toBe("one figure each: no range");
  });

  it("no extra harvest has nothing to pay for", () => {
    expect(cell("WORTHIT", 3, 3, 2.5, 1.1, "Cost of each extra unit")).toBe("no extra to pay for");
    expect(cell("WORTHIT", 3, 2, 2.5, -1, "Cost of each extra unit")).toBe("no extra to pay for");
  });
});

it("without a next planting nothing is multiplied", () => {
  expect(cell("WORTHIT", 3, 4, 2, 1, "For the next planting, middle")).toBe("give next_plants to see this");
});

it("refuses a price of nothing, a harvest below zero, and ranges without plants", () => {
  expect(refused("WORTHIT", 3, 4, 0, 1)).toEqual({
    code: "#VALUE!",
    message: "Price is 0. Give what one unit of the harvest sells for, above 0.",
  });
  expect(refused("WORTHIT", [3, -1], [4, 5], 2, 1).message).toMatch(/cannot be below zero/);
  expect(refused("WORTHIT", ["lost"], [4, 5], 2, 1).code).toBe("#N/A");
  expect(refused("WORTHIT", 3, 4, 2, null).message).toMatch(/extra_cost/);
  expect(refused("WORTHIT", [3, 4], [5], 2, 1, null, "pairs").message).toMatch(/match in size/);
});
