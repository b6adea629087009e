import { describe, expect, it } from "vitest";
import { upperTail } from "../../src/numerics/chiSquare";
import { randomSource, splitMix64, xoshiro128 } from "../../src/numerics/random";
import reference from "../reference/random.json";

it("SplitMix64 gives the published sequence for seed 1234567 (Rosetta Code, from Vigna's splitmix64.c)", () => {
  expect([1n, 2n, 3n, 4n, 5n].map((nth) => splitMix64(1234567n, nth))).toEqual([
    6457827717110365317n,
    3203168211198807973n,
    9817491932198370423n,
    4593380528125082431n,
    16408922859458223821n,
  ]);
});

it("xoshiro128** gives the reference sequence for state 1, 2, 3, 4 (from the C source, as in the rand_xoshiro crate)", () => {
  const next = xoshiro128(1, 2, 3, 4);
  expect(Array.from({ length: 10 }, next)).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

describe("agrees with both written a second time, in R", () => {
  it.each(reference.cases)("seed $seed", ({ seed, draws }) => {
    const source = randomSource(seed);
    expect(draws.map(() => source.next32())).toEqual(draws);
  });
});

it("uniform is made of two draws, high bits first", () => {
  const [high = 0, low = 0] = reference.cases[1]?.draws ?? [];
  const exact = (BigInt(high >>> 5) << 26n) | BigInt(low >>> 6);
  expect(randomSource(1).uniform()).toBe(Number(exact) / 2 ** 53);
});

describe("below", () => {
  it("is a remainder, and throws away the draws that would favour small numbers", () => {
    // 2³² − 1 = 3 · 5 · 17 · 257 · 65537: only the very last draw is unfair for 3, about a third for 2³¹ + 2³⁰
    const n = 2 ** 31 + 2 ** 30;
    const fair = reference.cases[2]?.draws.filter((draw) => draw < n) ?? [];
    expect(fair.length).toBeLessThan(20);
    const source = randomSource(42);
    expect(fair.map(() => source.below(n))).toEqual(fair);
  });

  it("is even over six faces: chi-square of 60 000 throws", () => {
    const source = randomSource(6);
    const counts = [0, 0, 0, 0, 0, 0];
    for (let i = 0; i < 60_000; i += 1) {
      const face = source.below(6);
      counts[face] = (counts[face] ?? 0) + 1;
    }
    const chiSquare = counts.reduce((sum, count) => sum + (count - 10_000) ** 2 / 10_000, 0);
    expect(upperTail(chiSquare, 5)).toBeGreaterThan(0.001);
    expect(upperTail(chiSquare, 5)).toBeLessThan(0.999);
  });

  it("of 1 is 0, of 2³² is the draw itself", () => {
    expect(randomSource(1).below(1)).toBe(0);
    expect(randomSource(1).below(2 ** 32)).toBe(randomSource(1).next32());
  });
});

it("neighbouring and opposite seeds start differently", () => {
  const starts = [-2, -1, 0, 1, 2, 2 ** 32].map((seed) => randomSource(seed).next32());
  expect(new Set(starts).size).toBe(6);
});

it.each([0.5, Number.NaN, Number.POSITIVE_INFINITY])("a seed of %d is a programmer's mistake", (seed) => {
  expect(() => randomSource(seed)).toThrow(RangeError);
});
