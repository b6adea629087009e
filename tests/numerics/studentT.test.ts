import fc from "fast-check";
import jStat from "jstat";
import { describe, expect, it } from "vitest";
import * as normal from "../../src/numerics/normal";
import { quantile, twoSidedCritical, twoSidedTail, upperTail } from "../../src/numerics/studentT";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

agreesOnGrid("t_upper_tail", upperTail, { truth: 5e-13, r: 1e-12 });
// R's qt() is good to 4e-11 near p = 0.5
agreesOnGrid("t_quantile", quantile, { truth: 1e-13, r: 1e-10 });

// Printed table of t at 0.975, crediting NIST; three decimals
it.each([
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [4, 2.776],
  [5, 2.571],
  [6, 2.447],
  [8, 2.306],
  [10, 2.228],
  [14, 2.145],
  [20, 2.086],
  [30, 2.042],
  [60, 2.0],
  [100, 1.984],
])("the printed table has t(0.975) with %d df as %d", (df, printed) => {
  near("critical", twoSidedCritical(0.05, df), printed, { absolute: 0.0005001 });
  near("as a quantile", quantile(0.975, df), twoSidedCritical(0.05, df), { relative: 1e-14 });
});

it("the printed table has t(0.95, 8) = 1.860 and t(0.90, 8) = 1.397", () => {
  near("0.95", quantile(0.95, 8), 1.86, { absolute: 0.0005 });
  near("0.90", quantile(0.9, 8), 1.397, { absolute: 0.0005 });
});

describe("laws of Student's t", () => {
  const df = fc.double({ min: 0.2, max: 1e6, noNaN: true });

  it("both tails fill up to 1 and the law is symmetric", () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), df, (t, freedom) => {
        near("sum", upperTail(t, freedom) + upperTail(-t, freedom), 1, { relative: 1e-14 });
        expect(twoSidedTail(t, freedom)).toBe(twoSidedTail(-t, freedom));
      }),
    );
  });

  it("the critical value has the tail it was asked for", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 0.999, noNaN: true }), df, (alpha, freedom) => {
        near("tail", twoSidedTail(twoSidedCritical(alpha, freedom), freedom), alpha, { relative: 1e-11 });
      }),
    );
  });

  // closed forms: df 1 is Cauchy's law, df 2 has 1 − t/√(2 + t²)
  it("df 1 and df 2 have closed forms", () => {
    for (const t of [1e-8, 0.1, 1, 3, 40]) {
      near("df 1", twoSidedTail(t, 1), 1 - (2 * Math.atan(t)) / Math.PI, { relative: 1e-13, absolute: 1e-15 });
      near("df 2", twoSidedTail(t, 2), 1 - t / Math.sqrt(2 + t * t), { relative: 1e-12 });
    }
  });

  it("jstat agrees to its seven digits", () => {
    for (const freedom of [1, 3, 10, 60, 200]) {
      for (const t of [0.5, 1, 2.5, 6]) {
        near("tail", upperTail(t, freedom), jStat.studentt.cdf(-t, freedom), { relative: 1e-6 });
      }
    }
  });
});

describe("hard cases of Student's t", () => {
  it("t = 0 and −0 leave half on each side", () => {
    expect(upperTail(0, 3.7)).toBe(0.5);
    expect(upperTail(-0, 3.7)).toBe(0.5);
    expect(twoSidedTail(-0, 3.7)).toBe(1);
  });

  it("infinite t leaves nothing beyond it", () => {
    expect(upperTail(Number.POSITIVE_INFINITY, 5)).toBe(0);
    expect(upperTail(Number.NEGATIVE_INFINITY, 5)).toBe(1);
    expect(twoSidedTail(Number.NEGATIVE_INFINITY, 5)).toBe(0);
  });

  it("infinitely many df are the normal law", () => {
    expect(upperTail(1.96, Number.POSITIVE_INFINITY)).toBe(normal.upperTail(1.96));
    near("critical", twoSidedCritical(0.05, Number.POSITIVE_INFINITY), 1.959963984540054);
    near("1e12 df", upperTail(1.96, 1e12), normal.upperTail(1.96), { relative: 1e-11 });
  });

  it("very few df", () => {
    // P(|T| > t) for df → 0 tends to 1; closed bound: the median of |T| with df 0.1 is far out
    expect(twoSidedTail(1, 0.01)).toBeGreaterThan(0.95);
    near("back again", twoSidedTail(twoSidedCritical(0.5, 0.1), 0.1), 0.5);
  });

  it("the edges of p", () => {
    expect(quantile(0, 4)).toBe(Number.NEGATIVE_INFINITY);
    expect(quantile(1, 4)).toBe(Number.POSITIVE_INFINITY);
    expect(Math.abs(quantile(0.5, 4))).toBe(0);
    expect(twoSidedCritical(1, 4)).toBe(0);
  });

  it.each([
    [Number.NaN, 5],
    [1, 0],
    [1, -2],
    [Number.POSITIVE_INFINITY, 0],
    [Number.POSITIVE_INFINITY, -2],
    [Number.NaN, Number.POSITIVE_INFINITY],
    [1, Number.NaN],
  ])("no answer for t = %d with %d df", (t, df) => {
    expect(upperTail(t, df)).toBeNaN();
    expect(twoSidedTail(t, df)).toBeNaN();
  });

  it.each([-0.1, 1.1, Number.NaN])("no answer for p = %d", (p) => {
    expect(quantile(p, 5)).toBeNaN();
    expect(twoSidedCritical(p, 5)).toBeNaN();
  });

  it.each([0, -2, Number.NaN])("no quantile with %d df, not even at the ends", (df) => {
    for (const p of [0, 0.05, 1]) expect(twoSidedCritical(p, df)).toBeNaN();
  });
});
