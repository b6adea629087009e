import { describe, expect, it } from "vitest";
import { studentizedRange } from "../../src/numerics/studentizedRange";
import { twoSidedTail } from "../../src/numerics/studentT";
import { near } from "../near";
import grid from "../reference/distributions.json";
import quantiles from "../reference/rangeQuantiles.json";
import { number } from "./grid";

const upperTail = (q: number, k: number, df: number) => studentizedRange(k).tail(q, df);
const quantile = (alpha: number, k: number, df: number) => studentizedRange(k).critical(alpha, df);

const rows = grid.cases.studentized_range_upper.map(({ given, r, truth }) => {
  const [q = Number.NaN, k = Number.NaN, df = Number.NaN] = given.map(number);
  return { q, k, df, r, truth: Number(truth) };
});

/** The absolute error of R's ptukey() for up to 12 averages, as measured against exact integration. */
function errorOfR(df: number): number {
  if (df >= 25_000 && df < Number.POSITIVE_INFINITY) return 7e-5;
  const known = [
    [12, 1e-8],
    [8, 1e-6],
    [5, 2e-5],
    [4, 5e-5],
    [3, 2e-4],
  ];
  return known.find(([from = 0]) => df >= from)?.[1] ?? 2e-3;
}

it(`agrees with the exact integral on ${rows.length} points`, () => {
  for (const { q, k, df, truth } of rows)
    near(`q ${q}, k ${k}, df ${df}`, upperTail(q, k, df), truth, { relative: 1e-11 });
});

it("agrees with R as far as R goes", () => {
  const upTo12 = rows.filter(({ k }) => k <= 12);
  for (const { q, k, df, r } of upTo12) {
    near(`q ${q}, k ${k}, df ${df}`, upperTail(q, k, df), r, { absolute: errorOfR(df) });
  }
});

it("at R's qtukey() lies the tail asked for, within the error of its ptukey() and its stop at 1e-4 in q", () => {
  for (const { k, df, alpha, r } of quantiles.cases) {
    const absolute = errorOfR(number(df)) + 1e-3 * alpha;
    near(`k ${k}, df ${df}, alpha ${alpha}`, upperTail(r, k, number(df)), alpha, { absolute });
  }
});

// printed tables, three decimals
it.each([
  [0.05, 2, 10, 3.151],
  [0.05, 4, 16, 4.046],
  [0.05, 3, 12, 3.773],
  [0.05, 3, 27, 3.506],
  [0.05, 6, 30, 4.301],
  [0.01, 4, 20, 5.018],
] as const)("printed: q(%d; %d, %d) = %d", (alpha, k, df, printed) => {
  near("q", quantile(alpha, k, df), printed, { absolute: 0.0005 });
});

it("interpolated in print, two decimals: q(0.05; 4, 36) = 3.81", () => {
  near("q", quantile(0.05, 4, 36), 3.81, { absolute: 0.005 });
});

// SciPy's mpmath file, P(Q ≤ 0.1)
it("agrees with mpmath near 0", () => {
  near("df 3", 1 - upperTail(0.1, 3, 3), 0.0027502772229359594, { absolute: 1e-13 });
  near("df 10", 1 - upperTail(0.1, 3, 10), 0.0027520560662338336, { absolute: 1e-13 });
});

describe("hard cases of the studentized range", () => {
  it("two averages are a t test", () => {
    expect(upperTail(3, 2, 7)).toBe(twoSidedTail(3 / Math.SQRT2, 7));
    expect(upperTail(0, 2, 7)).toBe(1);
    expect(upperTail(-1, 2, 7)).toBe(1);
    near("alpha", upperTail(quantile(0.05, 2, 7), 2, 7), 0.05, { relative: 1e-12 });
  });

  it("the quantile has the tail it was asked for, also far out and with fractional df", () => {
    for (const [alpha, k, df] of [
      [0.05, 4, 6.37],
      [1e-6, 5, 9],
      [0.9, 8, 14],
      [0.3, 20, 1.5],
    ] as const) {
      near(`${alpha}, ${k}, ${df}`, upperTail(quantile(alpha, k, df), k, df), alpha, { relative: 1e-10 });
    }
  });

  it("q of 0, below 0, infinite, and so large that the tail underflows", () => {
    expect(upperTail(0, 3, 5)).toBe(1);
    expect(upperTail(-1, 3, 5)).toBe(1);
    expect(upperTail(Number.POSITIVE_INFINITY, 3, 5)).toBe(0);
    expect(upperTail(200, 3, Number.POSITIVE_INFINITY)).toBe(0);
  });

  it.each([
    [1, 1, 5],
    [1, 2.5, 5],
    [1, 3, 0],
    [0, 2, 0],
    [-1, 2, -3],
    [Number.NaN, 3, 5],
    [1, Number.NaN, 5],
  ])("no answer for q = %d, k = %d, df = %d", (q, k, df) => {
    expect(upperTail(q, k, df)).toBeNaN();
  });

  it.each([
    [0, 3, 5],
    [1, 3, 5],
    [0, 2, 5],
    [1, 2, 5],
    [-0.5, 2, 5],
    [1.5, 2, 5],
    [0.05, 1, 5],
    [0.05, 3, 0],
  ])("no quantile for alpha = %d, k = %d, df = %d", (alpha, k, df) => {
    expect(quantile(alpha, k, df)).toBeNaN();
  });
});
