import { describe, expect, it } from "vitest";
import { dunnett } from "../../src/numerics/dunnett";
import * as normal from "../../src/numerics/normal";
import * as studentT from "../../src/numerics/studentT";
import { near } from "../near";
import reference from "../reference/dunnettTails.json";

const criticals = reference.cases.filter(({ kind }) => kind === "critical");
const tails = reference.cases.filter(({ kind }) => kind === "tail");
const twoSidedTail = (d: number, lambdas: readonly number[], df: number) => dunnett(lambdas).tail(d, df);
const twoSidedCritical = (alpha: number, lambdas: readonly number[], df: number) =>
  dunnett(lambdas).critical(alpha, df);
const equal = (comparisons: number) => new Array<number>(comparisons).fill(Math.SQRT1_2);

it(`agrees with ${criticals.length} exact critical values for equal counts`, () => {
  for (const { x, lambda, df, precise } of criticals) {
    near(`alpha ${x}, m ${lambda.length}, df ${df}`, twoSidedCritical(x, lambda, df), precise, { relative: 1e-11 });
  }
});

it(`agrees with ${tails.length} exact tails for unequal counts`, () => {
  for (const { x, lambda, df, precise } of tails) {
    near(`d ${x}, m ${lambda.length}, df ${df}`, twoSidedTail(x, lambda, df), precise, { relative: 1e-11 });
  }
});

it("agrees with R's adaptive integration and with mvtnorm", () => {
  for (const { kind, x, lambda, df, precise, r, mvtnorm } of reference.cases) {
    const tail = twoSidedTail(kind === "tail" ? x : precise, lambda, df);
    near(`integrate: ${x}, m ${lambda.length}, df ${df}`, tail, r, { absolute: 1e-10 });
    near(`mvtnorm: ${x}, m ${lambda.length}, df ${df}`, tail, mvtnorm, {
      absolute: lambda.length === 2 ? 1e-12 : 1e-4,
    });
  }
});

// Dunnett (1955), two-sided tables, which are approximations: p within 0.005 of the table's
it.each([
  [1, 10, 2.23, 0.05],
  [2, 30, 2.32, 0.05],
  [3, 20, 2.57, 0.05],
  [3, 10, 2.81, 0.05],
  [2, 60, 2.9, 0.01],
  [4, 60, 3.14, 0.01],
  [4, 12, 3.76, 0.01],
])("Dunnett 1955: %d comparisons, %d df, d = %d has p = %d", (comparisons, df, d, p) => {
  near("p", twoSidedTail(d, equal(comparisons), df), p, { absolute: 0.005 });
});

// the exact values the 1955 table misses
it("R's integral has p = 0.0460 and 0.0091 where the table says 0.05 and 0.01", () => {
  near("3 comparisons", twoSidedTail(2.81, equal(3), 10), 0.046, { absolute: 0.00005 });
  near("4 comparisons", twoSidedTail(3.76, equal(4), 12), 0.0091, { absolute: 0.00005 });
});

describe("laws of Dunnett's distribution", () => {
  it("lies between one comparison and Bonferroni's bound", () => {
    for (const [m, df] of [
      [2, 3.3],
      [5, 12],
      [19, 60],
    ] as const) {
      const p = twoSidedTail(2.5, equal(m), df);
      expect(p).toBeGreaterThan(studentT.twoSidedTail(2.5, df));
      expect(p).toBeLessThan(m * studentT.twoSidedTail(2.5, df));
    }
  });

  it("does not mind the order of the comparisons or their common sign", () => {
    const p = twoSidedTail(2.2, [0.6, 0.7, 0.8], 11);
    near("order", twoSidedTail(2.2, [0.8, 0.6, 0.7], 11), p, { relative: 1e-14 });
    near("sign", twoSidedTail(2.2, [-0.6, -0.7, -0.8], 11), p, { relative: 1e-14 });
  });

  it("without correlation and with known spread it is a product", () => {
    const one = 2 * normal.upperTail(2.4);
    near("p", twoSidedTail(2.4, [0, 0, 0], Number.POSITIVE_INFINITY), -Math.expm1(3 * Math.log1p(-one)), {
      relative: 1e-12,
    });
  });

  it("one comparison is Student's t", () => {
    expect(twoSidedTail(2.1, [0.7], 9)).toBe(studentT.twoSidedTail(2.1, 9));
    expect(twoSidedCritical(0.05, [0.7], 9)).toBe(studentT.twoSidedCritical(0.05, 9));
  });

  it("the critical value has the tail it was asked for", () => {
    for (const alpha of [1e-5, 0.05, 0.5]) {
      const lambdas = [0.55, 0.66, 0.77, 0.88];
      near(`${alpha}`, twoSidedTail(twoSidedCritical(alpha, lambdas, 7.5), lambdas, 7.5), alpha, { relative: 1e-10 });
    }
  });
});

describe("hard cases of Dunnett's distribution", () => {
  it("d = 0 and infinite d", () => {
    expect(twoSidedTail(0, equal(3), 10)).toBe(1);
    expect(twoSidedTail(Number.POSITIVE_INFINITY, equal(3), 10)).toBe(0);
  });

  it.each([
    [-1, [0.7, 0.7], 10],
    [Number.NaN, [0.7, 0.7], 10],
    [1, [], 10],
    [1, [0.7, 1], 10],
    [1, [0.7, Number.NaN], 10],
    [1, [0.7, 0.7], 0],
  ])("no answer for d = %d, lambdas %j, df = %d", (d, lambdas, df) => {
    expect(twoSidedTail(d, lambdas, df)).toBeNaN();
  });

  it.each([0, 1, -0.5, 1.5, Number.NaN])("no critical value for alpha = %d, of one comparison or several", (alpha) => {
    expect(twoSidedCritical(alpha, equal(1), 10)).toBeNaN();
    expect(twoSidedCritical(alpha, equal(2), 10)).toBeNaN();
  });

  it("no critical value for impossible correlations", () => {
    expect(twoSidedCritical(0.05, [1], 10)).toBeNaN();
    expect(twoSidedCritical(0.05, [], 10)).toBeNaN();
  });
});
