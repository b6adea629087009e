import { describe, expect, it } from "vitest";
import { midranks, roundingOf } from "../../src/methods/midranks";
import reference from "../reference/midranks.json";
import { trialOf } from "./trialOf";

describe("midranks agrees with R's rank(), and with ties counted by R's table()", () => {
  it.each(reference.cases)("$trial: Σ(t³ − t) $tieSum", ({ trial, ranks, tieSum }) => {
    const { usual, tried } = trialOf(trial);
    expect(midranks([...usual, ...tried], 0)).toEqual({ ranks, tieSum });
  });
});

describe("midranks and rounding", () => {
  it("a chain of neighbours within the noise is one tie, though its ends are farther apart", () => {
    expect(midranks([3, 1, 2], 1)).toEqual({ ranks: [2, 2, 2], tieSum: 24 });
    expect(midranks([3.5, 1, 2], 1)).toEqual({ ranks: [3, 1.5, 1.5], tieSum: 6 });
  });

  it("amounts that converted units pull apart tie within roundingOf, and not without", () => {
    const values = [0.1 + 0.2, 0.7, 0.3];
    expect(midranks(values, roundingOf(values)).ranks).toEqual([1.5, 3, 1.5]);
    expect(midranks(values, 0).ranks).toEqual([2, 3, 1]);
  });

  it("roundingOf follows the largest size, losses and another unit included, and is 0 of nothing", () => {
    expect(roundingOf([3, -2000])).toBe(2000 * roundingOf([1]));
    expect(roundingOf([])).toBe(0);
    // far wider than a double's own rounding, far finer than any scale weighs
    expect(roundingOf([1])).toBe(1e-12);
  });
});

it("numbers are ranked by size, not as text, below 0 first", () => {
  expect(midranks([10, 9, -1, -20, 100], 0)).toEqual({ ranks: [4, 3, 2, 1, 5], tieSum: 0 });
});

it("no values have no ranks and no ties", () => {
  expect(midranks([], 0)).toEqual({ ranks: [], tieSum: 0 });
});
