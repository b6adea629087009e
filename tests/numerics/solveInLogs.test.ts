import { expect, it } from "vitest";
import { solveInLogs } from "../../src/numerics/solveInLogs";
import { near } from "../near";

// the exponential law: 1 − e^−v below v, e^−v above
const below = (v: number) => ({ area: -Math.expm1(-v), growth: v * Math.exp(-v) });
const above = (v: number) => ({ area: Math.exp(-v), growth: -v * Math.exp(-v) });

it.each([1, 1e-200, 1e200, Number.NaN, Number.POSITIVE_INFINITY, 0, -3])(
  "arrives from a first guess of %d",
  (start) => {
    near("below", solveInLogs({ area: 0.3, rising: true }, start, below), -Math.log(0.7), { relative: 1e-14 });
    near("above", solveInLogs({ area: 1e-30, rising: false }, start, above), 30 * Math.LN10, { relative: 1e-14 });
  },
);

it("where the bend is known, arrives at the same place in fewer looks", () => {
  const looks = (known: boolean) => {
    let count = 0;
    const found = solveInLogs({ area: 0.3, rising: true }, 0.356674947, (v) => {
      count += 1;
      return { ...below(v), ...(known ? { bend: 1 - v } : {}) };
    });
    near(known ? "known" : "unknown", found, -Math.log(0.7), { relative: 1e-15 });
    return count;
  };
  expect(looks(false)).toBe(2);
  expect(looks(true)).toBe(1);
});

it.each([1e-6, 0.01, 0.5, 2, 30, 700, 1e9])("a known bend leads home from %d as well", (start) => {
  const bent = (v: number) => ({ ...above(v), bend: 1 - v });
  near("above", solveInLogs({ area: 1e-30, rising: false }, start, bent), 30 * Math.LN10, { relative: 1e-14 });
});

it("arrives in a window so narrow that the area is 0 or 1 almost everywhere", () => {
  const steep = (v: number) => ({
    area: Math.exp(-((100 / v) ** 50)),
    growth: 50 * (100 / v) ** 50 * Math.exp(-((100 / v) ** 50)),
  });
  near("steep", solveInLogs({ area: 1e-100, rising: true }, 1e-9, steep), 100 * (100 * Math.LN10) ** -0.02, {
    relative: 1e-13,
  });
});

it("an answer too small for doubles is 0, one too large infinite", () => {
  const slow = (v: number) => ({ area: v ** 0.01, growth: 0.01 * v ** 0.01 });
  expect(solveInLogs({ area: 1e-5, rising: true }, 1, slow)).toBe(0);
  expect(solveInLogs({ area: 1e5, rising: true }, 1, slow)).toBe(Number.POSITIVE_INFINITY);
});
