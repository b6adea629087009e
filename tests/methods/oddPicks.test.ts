import { describe, expect, it } from "vitest";
import { countsFruit, oddPicks } from "../../src/methods/oddPicks";

const list = (...values: readonly number[]) => Float64Array.from(values);
const none = Number.NaN;

describe("oddPicks (METHODS 8.11)", () => {
  it("per fruit: five times the middle or a fifth of it", () => {
    const counts = list(1, 2, 1, 3, 1, 1, 1);
    expect(oddPicks(list(200, 400, 200, 600, 1000, 40, 999), counts)).toEqual([4, 5]);
    expect(oddPicks(list(200, 400, 200, 600, 999, 41, 0), counts)).toEqual([]);
  });

  it("without counts, and where one is missing or 0: eight times the middle, never a small one", () => {
    expect(oddPicks(list(200, 200, 200, 1600, 1), null)).toEqual([3]);
    expect(oddPicks(list(200, 200, 200, 1599, 0), null)).toEqual([]);
    expect(oddPicks(list(200, 200, 200, 1600, 1), list(1, 1, 1, none, 0))).toEqual([3]);
  });

  it("passes over rows without an amount, and finds nothing where nothing was picked", () => {
    expect(oddPicks(list(none, 0, none), null)).toEqual([]);
    expect(oddPicks(list(none, 0, none), list(1, 1, 1))).toEqual([]);
  });
});

describe("countsFruit", () => {
  const fruit = list(1, 2, 1, 3, 1, 2, 4, 1, 2, none);
  const grams = list(210, 390, 190, 610, 205, 420, 790, 195, 400, 300);

  it("fruit beside its weight", () => {
    expect(countsFruit(fruit, grams)).toBe(true);
    expect(
      countsFruit(
        fruit,
        grams.map((value) => value / 1000),
      ),
    ).toBe(true);
  });

  it("never the weight beside its fruit, a bed's number, numbers with decimals or below zero, few rows", () => {
    expect(countsFruit(grams, fruit)).toBe(false);
    expect(countsFruit(list(1, 2, 3, 4, 5, 6, 7, 8, 9, 10), grams)).toBe(false);
    expect(
      countsFruit(
        fruit.map((value) => value / 2),
        grams,
      ),
    ).toBe(false);
    expect(
      countsFruit(
        fruit.map((value) => -value),
        grams,
      ),
    ).toBe(false);
    expect(countsFruit(fruit.slice(0, 7), grams.slice(0, 7))).toBe(false);
  });
});
