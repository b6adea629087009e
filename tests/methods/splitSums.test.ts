import { describe, expect, it } from "vitest";
import { forEachFlipSum, forEachSplitSum } from "../../src/methods/splitSums";

function splitSums(values: readonly number[], size: number): number[] {
  const sums: number[] = [];
  forEachSplitSum(values, size, (sum) => sums.push(sum));
  return sums.sort((left, right) => left - right);
}

function flipSums(values: readonly number[]): number[] {
  const sums: number[] = [];
  forEachFlipSum(values, (sum) => sums.push(sum));
  return sums.sort((left, right) => left - right);
}

const bitsOf = (whole: number) => [...whole.toString(2)].filter((bit) => bit === "1").length;

describe("forEachSplitSum", () => {
  it("carries no rounding from one choice to the next: 1 + 3 is 4 after sums of 10¹⁶", () => {
    expect(splitSums([1e16, 1, 3, -1e16], 2)).toContain(4);
    expect(splitSums([1e16, -1e16, 1, 3], 2)).toContain(4);
  });

  // a sum of different powers of 2 tells by its bits which were chosen
  it.each([1, 2, 3, 4, 5, 6])("makes every choice of %d of six values once", (size) => {
    const chosen = Array.from({ length: 64 }, (_, whole) => whole).filter((whole) => bitsOf(whole) === size);
    expect(splitSums([1, 2, 4, 8, 16, 32], size)).toEqual(chosen);
  });

  it("tells equal values apart: two choices that sum to the same are two", () => {
    expect(splitSums([1, 1, 2], 2)).toEqual([2, 3, 3]);
  });
});

describe("forEachFlipSum", () => {
  it("makes every choice of signs once", () => {
    expect(flipSums([4, 1, 2])).toEqual([-7, -5, -3, -1, 1, 3, 5, 7]);
  });

  it("a value of 0 has two signs like any other, and nothing has one sum", () => {
    expect(flipSums([3, 0])).toEqual([-3, -3, 3, 3]);
    expect(flipSums([])).toEqual([0]);
  });
});
