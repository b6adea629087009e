import { describe, expect, it } from "vitest";
import { oddPicks } from "../../src/methods/oddPicks";

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
