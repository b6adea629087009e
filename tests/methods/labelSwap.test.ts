import { describe, expect, it } from "vitest";
import { labelSwap } from "../../src/methods/labelSwap";
import { choose } from "../../src/numerics/choose";
import { near } from "../near";
import reference from "../reference/labelSwap.json";
import { printed } from "./printed";
import { trialOf } from "./trialOf";

describe("labelSwap counts what R's enumeration counts", () => {
  const cases = reference.cases.filter(({ method }) => method === "splits");
  it.each(cases)("$trial: $hits of $tried", ({ trial, hits, tried }) => {
    const { usual, tried: after } = trialOf(trial);
    expect(labelSwap(usual, after)).toEqual({ p: hits / tried, hits, tried, exact: true });
  });
});

describe("labelSwap agrees with printed figures (R)", () => {
  it.each([
    ["plantGrowth2", "0.0483340"],
    ["plantGrowth1", "0.247927"],
    ["spraysDC", "0.0038925"],
  ])("%s", (trial, p) => {
    const { usual, tried } = trialOf(trial);
    printed("p", labelSwap(usual, tried).p, p);
  });

  it("eleven plants of Box, Hunter & Hunter: 305 of 462", () => {
    const swaps = labelSwap([29.9, 11.4, 25.3, 16.5, 21.1], [26.6, 23.7, 28.5, 14.2, 17.9, 24.3]);
    expect(swaps).toMatchObject({ hits: 305, tried: 462 });
  });

  it("two and three plants each: 1 in 3, 1 in 10", () => {
    expect(labelSwap([3, 5], [10, 14]).p).toBe(1 / 3);
    expect(labelSwap([12, 15, 11], [18, 21, 19]).p).toBe(0.1);
  });
});

describe("labelSwap at the limit of 3 000 000 splits", () => {
  const { usual, tried } = trialOf("thirty");

  it("draws 20 000 beyond it, the same ones each time, and never says 0", () => {
    const swaps = labelSwap(usual, tried);
    expect(swaps).toMatchObject({ tried: 20_000, exact: false });
    expect(swaps.p).toBe((swaps.hits + 1) / 20_001);
    expect(labelSwap(usual, tried)).toEqual(swaps);
    const apart = labelSwap(
      usual,
      tried.map((value) => value + 1000),
    );
    expect(apart).toMatchObject({ hits: 0, p: 1 / 20_001 });
  });

  it("drawn shares come within four standard errors of the true one, known here by arithmetic", () => {
    // 11 plants of 40 bore one fruit: the number among 20 is hypergeometric, and 3 against 8 as far out as 8 against 3
    const bearing = (count: number) => Array.from({ length: 20 }, (_, i) => (i < count ? 1 : 0));
    const ways = (count: number) => choose(11, count) * choose(29, 20 - count);
    const share = (2 * (ways(0) + ways(1) + ways(2) + ways(3))) / choose(40, 20);
    const drawn = labelSwap(bearing(3), bearing(8));
    expect(drawn.exact).toBe(false);
    near("p", drawn.p, share, { absolute: 4 * Math.sqrt((share * (1 - share)) / 20_000) });
  });
});

describe("labelSwap keeps its shape", () => {
  const [usual, tried] = [
    [4.1, 5.2, 3.9, 4.4],
    [5.1, 6.3, 4.9, 5.2, 4.4],
  ];

  it("swapping groups, another unit and a shift change no count", () => {
    const plain = labelSwap(usual, tried);
    expect(labelSwap(tried, usual)).toEqual(plain);
    expect(
      labelSwap(
        usual.map((v) => v * 0.4536),
        tried.map((v) => v * 0.4536),
      ),
    ).toEqual(plain);
    expect(
      labelSwap(
        usual.map((v) => v + 1e6),
        tried.map((v) => v + 1e6),
      ),
    ).toEqual(plain);
  });

  // −25 … −1 and 1 … 25: 25 + 24 and 25 + 23 are the largest sums of two, and as far out on the other side
  it("2 against 48, either way round: 4 of 1225, without counting choices of 48", { timeout: 2000 }, () => {
    const either = Array.from({ length: 25 }, (_, at) => [at + 1, -at - 1]).flat();
    const [few, many] = [[25, 23], either.filter((value) => value !== 25 && value !== 23)];
    for (const swaps of [labelSwap(few, many), labelSwap(many, few)])
      expect(swaps).toEqual({ p: 4 / 1225, hits: 4, tried: 1225, exact: true });
  });

  it("a gap of nothing is no further than any, whatever rounding makes of it", () => {
    // both average 0.5
    for (const [one, other] of [
      [0.1, 0.9],
      [0.9, 0.1],
    ] as const) {
      expect(labelSwap([one, other], [0.3, 0.7])).toEqual({ p: 1, hits: 6, tried: 6, exact: true });
      expect(labelSwap([0.3, 0.7], [one, other])).toEqual({ p: 1, hits: 6, tried: 6, exact: true });
    }
  });

  it("equal plants, and one against one, tell nothing", () => {
    expect(labelSwap([2, 2], [2, 2, 2])).toEqual({ p: 1, hits: 10, tried: 10, exact: true });
    near("p", labelSwap([2], [7]).p, 1);
  });
});
