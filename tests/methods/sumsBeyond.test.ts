import { expect, it } from "vitest";
import { forEachFlipSum, forEachSplitSum } from "../../src/methods/splitSums";
import { flipsBeyond, splitsBeyond } from "../../src/methods/sumsBeyond";
import { choose } from "../../src/numerics/choose";

const values = [3, -1, 4, 1, -5, 9, 2, -6, 5];
const bars = [-1, 0, 0.5, 1, 4, 9, 17, 24, 25];

// counted one by one; whole numbers add without rounding
it.each(bars)("choices as far out as %d are those that counting one by one finds", (bar) => {
  for (let size = 1; size <= values.length; size += 1) {
    let hits = 0;
    forEachSplitSum(values, size, (sum) => {
      if (Math.abs(sum) >= bar) hits += 1;
    });
    expect(splitsBeyond(values, size, bar), `${size}`).toBe(hits);
  }
});

it.each(bars)("signs as far out as %d are those that counting one by one finds", (bar) => {
  for (const some of [values, values.slice(1), [0, 0, 3], [2]]) {
    let hits = 0;
    forEachFlipSum(some, (sum) => {
      if (Math.abs(sum) >= bar) hits += 1;
    });
    expect(flipsBeyond(some, bar), `${some}`).toBe(hits);
  }
});

// of 24 ones and minus ones, the choices of 12 with j ones: C(12, j)·C(12, 12 − j); their sums are 2j − 12
it("12 of 24: the sums of halves that cannot be told apart", () => {
  const signs = [...Array<number>(12).fill(1), ...Array<number>(12).fill(-1)];
  const outer = [0, 1, 2].reduce((sum, j) => sum + 2 * choose(12, j) ** 2, 0);
  expect(splitsBeyond(signs, 12, 8)).toBe(outer);
});

// of −300 … −1 and 1 … 300, a sum of 0 comes from 300 pairs, and the largest sum from one pair on either side
it("2 of 600, without counting choices of more", () => {
  const either = Array.from({ length: 300 }, (_, at) => [at + 1, -at - 1]).flat();
  expect(splitsBeyond(either, 2, 0.5)).toBe(choose(600, 2) - 300);
  expect(splitsBeyond(either, 2, 599)).toBe(2);
});

it("a choice of all, and one of a single value", () => {
  expect(splitsBeyond([1, 2, -4], 3, 1)).toBe(1);
  expect(splitsBeyond([1, 2, -4], 3, 1.5)).toBe(0);
  expect(splitsBeyond([5], 1, 5)).toBe(1);
});
