import fc from "fast-check";
import { expect, it } from "vitest";
import { farAbove } from "../../src/methods/farAbove";

const of = (...amounts: readonly number[]) => farAbove(Float64Array.from(amounts));

it("eight times the middle pick and more (METHODS 8.11); zeros and unknown amounts do not count", () => {
  expect(of(200, 300, 250, 2000, 240, 260)).toEqual([]);
  expect(of(200, 300, 250, 2220, 240, 260, 0, Number.NaN, 0, 0, 0, 0)).toEqual([3]);
  expect(of(1, 1, 1, 1, 8)).toEqual([4]);
  expect(of(1, 1, 1, 1, 7.99)).toEqual([]);
});

it("nobody knows what is usual among fewer than five picks", () => {
  expect(of(1, 1, 1, 100)).toEqual([]);
  expect(of()).toEqual([]);
});

it("finds what sorting all picks finds", () => {
  const amounts = fc.array(
    fc.integer({ min: 0, max: 12 }).map((power) => 2 ** power),
    { minLength: 5, maxLength: 30 },
  );
  fc.assert(
    fc.property(amounts, (picks) => {
      const sorted = picks.toSorted((one, other) => one - other);
      const half = (sorted.length - 1) / 2;
      const middle = ((sorted[Math.floor(half)] ?? 0) + (sorted[Math.ceil(half)] ?? 0)) / 2;
      expect(of(...picks)).toEqual([...picks.keys()].filter((at) => (picks[at] ?? 0) >= 8 * middle));
    }),
    { numRuns: 500, seed: 6 },
  );
});

it("visits without a harvest do not make every pick far, however many they are", () => {
  expect(of(10, 10, 10, 10, 80, 0, 0, 0, 0, 0, 0)).toEqual([4]);
});

it("the middle of six lies between the third and the fourth, though the fourth alone is no small pick", () => {
  expect(of(1, 1, 1, 15, 15, 80)).toEqual([5]);
});
