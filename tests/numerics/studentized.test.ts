import { describe, expect, it, vi } from "vitest";
import * as normal from "../../src/numerics/normal";
import { studentized } from "../../src/numerics/studentized";
import { twoSidedCritical, twoSidedTail } from "../../src/numerics/studentT";
import { near } from "../near";

/** |Z|/S is Student's |t|, which studentT.ts works out another way (the incomplete beta function). */
const absolute = studentized({ exceeds: (w) => 2 * normal.upperTail(w), guess: () => 1 });

/** √X for an exponential X: P(X > w²) = e^(−w²), whose average over S is (1 + 2d²/df)^(−df/2). */
const rayleigh = studentized({ exceeds: (w) => Math.exp(-w * w), guess: () => 3 });

const degrees = [0.7, 1, 2.5, 10, 27.3, 112, 3000, 1e6];

describe("the tail", () => {
  it.each(degrees)("of |Z|/S with %d df is Student's", (df) => {
    for (const d of [1e-3, 0.5, 2, 7, 30])
      near(`d ${d}`, absolute.tail(d, df), twoSidedTail(d, df), { relative: 1e-11 });
  });

  it.each(degrees)("with an exponential square and %d df is a power", (df) => {
    for (const d of [0.01, 1, 3, 12]) {
      near(`d ${d}`, rayleigh.tail(d, df), Math.exp((-df / 2) * Math.log1p((2 * d * d) / df)), { relative: 1e-11 });
    }
  });

  it("with infinitely many df is that of X itself", () => {
    expect(rayleigh.tail(1.5, Number.POSITIVE_INFINITY)).toBe(Math.exp(-2.25));
  });

  it("is 1 from 0 down, 0 at infinity, NaN outside the domain", () => {
    expect([0, -3, Number.POSITIVE_INFINITY].map((d) => absolute.tail(d, 5))).toEqual([1, 1, 0]);
    expect([absolute.tail(Number.NaN, 5), absolute.tail(1, 0), absolute.tail(1, Number.NaN)]).toEqual([
      Number.NaN,
      Number.NaN,
      Number.NaN,
    ]);
  });
});

describe("the critical value", () => {
  it.each([...degrees, Number.POSITIVE_INFINITY])("of |Z|/S with %d df is Student's", (df) => {
    for (const alpha of [1e-6, 0.05, 0.5, 0.9]) {
      near(`alpha ${alpha}`, absolute.critical(alpha, df), twoSidedCritical(alpha, df), { relative: 1e-11 });
    }
  });

  it.each([0, 1, Number.NaN])("is missing for alpha = %d", (alpha) => {
    expect(absolute.critical(alpha, 5)).toBeNaN();
  });
});

it("asks for the tail of X once for each place of the grid, whatever d and df", () => {
  const exceeds = vi.fn((w: number) => Math.exp(-w * w));
  const { tail, critical } = studentized({ exceeds, guess: () => 2 });
  tail(2, 12);
  const first = exceeds.mock.calls.length;
  tail(2.02, 12);
  tail(2, 13);
  critical(0.05, 12);
  expect(exceeds.mock.calls.length).toBeLessThan(2 * first);
  expect(new Set(exceeds.mock.calls.map(([w]) => w)).size).toBe(exceeds.mock.calls.length);
});
