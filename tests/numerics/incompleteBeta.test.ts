import fc from "fast-check";
import jStat from "jstat";
import { expect, it } from "vitest";
import { betaKernel, betaTails } from "../../src/numerics/incompleteBeta";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

const at = (x: number) => ({ x, y: 1 - x });

agreesOnGrid("incomplete_beta", (x = 0, a = 0, b = 0) => betaTails(at(x), { a, b }).lower, { truth: 5e-13, r: 1e-11 });

it("both tails are each other's mirror image", () => {
  const positive = fc.double({ min: 0.1, max: 1e4, noNaN: true });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1023 }), positive, positive, (part, a, b) => {
      const x = part / 1024;
      const { lower, upper } = betaTails(at(x), { a, b });
      const mirrored = betaTails(at(1 - x), { a: b, b: a });
      near("lower", lower, mirrored.upper, { relative: 1e-12, absolute: 1e-15 });
      near("upper", upper, mirrored.lower, { relative: 1e-12, absolute: 1e-15 });
    }),
  );
});

it("jstat agrees to its seven digits", () => {
  for (const [x, a, b] of [
    [0.3, 2, 5],
    [0.9, 12, 0.5],
    [0.5, 40, 41],
  ] as const) {
    near(`${x}, ${a}, ${b}`, betaTails(at(x), { a, b }).lower, jStat.ibeta(x, a, b), { relative: 1e-6 });
  }
});

it("the kernel is x^a y^b / B(a, b): B(2, 3) = 1/12, B(½, ½) = π", () => {
  near("2, 3", betaKernel(at(0.25), { a: 2, b: 3 }), 12 * 0.25 ** 2 * 0.75 ** 3, { relative: 1e-14 });
  near("½, ½", betaKernel(at(0.25), { a: 0.5, b: 0.5 }), Math.sqrt(0.25 * 0.75) / Math.PI, { relative: 1e-14 });
});

it("hard cases: both ends, a = 1 (where the fraction's first term is 0/0), an x that underflows", () => {
  expect(betaTails({ x: 0, y: 1 }, { a: 2, b: 3 })).toEqual({ lower: 0, upper: 1 });
  expect(betaTails({ x: 1, y: 0 }, { a: 2, b: 3 })).toEqual({ lower: 1, upper: 0 });
  near("a = 1", betaTails(at(0.4), { a: 1, b: 0.5 }).lower, 1 - Math.sqrt(0.6), { relative: 1e-14 });
  expect(betaTails({ x: 1e-300, y: 1 }, { a: 3, b: 2 }).lower).toBe(0);
});

it.each([
  [-0.1, 1.1, 2, 3],
  [1.1, -0.1, 2, 3],
  [0.5, 0.5, 0, 3],
  [0.5, 0.5, 2, 0],
  [0, 1, 2, 0],
  [0, 1, 2, -3],
  [0.5, 0.5, 2, -3],
  [Number.NaN, 0.5, 2, 3],
])("no answer for x = %d, y = %d, a = %d, b = %d", (x, y, a, b) => {
  expect(betaTails({ x, y }, { a, b })).toEqual({ lower: Number.NaN, upper: Number.NaN });
});
