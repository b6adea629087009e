import fc from "fast-check";
import { expect, it } from "vitest";
import { fisherExactTwoSided } from "../../src/numerics/hypergeometric";
import { near } from "../near";
import reference from "../reference/fisherExact.json";

it.each(reference.cases)("agrees with R's fisher.test(): $counts", ({ counts, p }) => {
  const [a = 0, b = 0, c = 0, d = 0] = counts;
  near("p", fisherExactTwoSided(a, b, c, d), p, { relative: 1e-11 });
});

// R. A. Fisher (1935), The Design of Experiments: the lady's four cups, all found: 2 · 1/70 two-sided
it("all four of eight cups found by luck: 2 in 70", () => {
  near("p", fisherExactTwoSided(4, 0, 0, 4), 2 / 70, { relative: 1e-15 });
});

it("does not mind which row or column comes first", () => {
  const count = fc.integer({ min: 0, max: 60 });
  fc.assert(
    fc.property(count, count, count, count, (a, b, c, d) => {
      const p = fisherExactTwoSided(a, b, c, d);
      expect(p).toBeGreaterThan(0);
      expect(p).toBeLessThanOrEqual(1);
      near("rows", fisherExactTwoSided(c, d, a, b), p, { relative: 1e-12 });
      near("turned", fisherExactTwoSided(a, c, b, d), p, { relative: 1e-12 });
    }),
  );
});

it("hard cases: empty tables and rows", () => {
  expect(fisherExactTwoSided(0, 0, 0, 0)).toBe(1);
  expect(fisherExactTwoSided(0, 0, 3, 5)).toBe(1);
});

it.each([
  [-1, 2, 3, 4],
  [1.5, 2, 3, 4],
  [1, 2, Number.NaN, 4],
  [1, 2, 3, Number.POSITIVE_INFINITY],
])("no answer for %d, %d, %d, %d", (a, b, c, d) => {
  expect(fisherExactTwoSided(a, b, c, d)).toBeNaN();
});
