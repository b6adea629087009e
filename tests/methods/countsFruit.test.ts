import { describe, expect, it } from "vitest";
import { countsFruit } from "../../src/methods/countsFruit";

const list = (...values: readonly number[]) => Float64Array.from(values);
const none = Number.NaN;

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

  it("eight picks with both are enough, one less is not", () => {
    expect(countsFruit(fruit.slice(0, 8), grams.slice(0, 8))).toBe(true);
    expect(countsFruit(list(...fruit.slice(0, 7), none), grams.slice(0, 8))).toBe(false);
  });

  it("passes over visits without fruit or weight", () => {
    expect(countsFruit(list(...fruit, 0, 0, 3, 2), list(...grams, 0, 250, 0, none))).toBe(true);
  });

  it("never with one number below zero, a column beside itself, or where nothing differs", () => {
    expect(countsFruit(list(...fruit, -1), list(...grams, 200))).toBe(false);
    expect(countsFruit(grams, grams)).toBe(false);
    expect(countsFruit(list(...fruit.map(() => 1)), list(...grams.map(() => 200)))).toBe(false);
  });
});
