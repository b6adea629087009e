import { describe, expect, it } from "vitest";
import { plantsNeeded } from "../../src/methods/plantsNeeded";
import { power } from "../../src/methods/power";
import { setOut } from "../../src/methods/setOut";
import reference from "../reference/power.json";
import { figure } from "./found";
import { numbers, planOf, unevennessFor } from "./planRows";

const separate = (unevenness: number) => planOf(unevenness, 2, 0);

describe("plantsNeeded agrees with R", () => {
  it.each([
    ["two.sample", reference.cases.neededTwoSample, 0, 1],
    // one each of two treatments in a bed are pairs; deviations of differences are √2 times those of plants
    ["paired", reference.cases.neededPaired, -1, Math.SQRT2],
  ] as const)("power.t.test(strict = TRUE), %s", (type, rows, b, scale) => {
    for (const row of rows) {
      const [delta = 0, chance = 0, n = 0] = row;
      const found = plantsNeeded(1, chance, planOf(unevennessFor(delta * scale), 2, b));
      expect(found, `${type}, delta ${delta}, chance ${chance}`).toEqual(n > 500 ? { absent: "not-practical" } : n);
    }
  });

  it("spread that grows with the yield, all layouts: counting upward with R's non-central pt()", () => {
    for (const row of reference.cases.needed) {
      const [p = 0, c, chance = 0, k, b, n = 0] = numbers(row);
      expect(plantsNeeded(p, chance, planOf(c, k, b)), `${row}`).toBe(n);
    }
  });
});

describe("plantsNeeded agrees with printed figures", () => {
  it.each([
    [0.3, 0.3, 23],
    [0.5, 0.3, 11],
    [1, 0.4, 8],
    [-0.3, 0.3, 13],
    [-0.2, 0.3, 30],
    [0.25, 0.2, 14],
    [0.1, 0.1, 19],
  ])("change %d, unevenness %d: %d (R)", (change, unevenness, n) => {
    expect(plantsNeeded(change, 0.8, separate(unevenness))).toBe(n);
  });

  it("unevenness 30 %, 20 % fall: 29.52 → 30 by the published rule (van Belle & Millard), and by ours", () => {
    expect(Math.ceil((8 * 0.3 ** 2 * (1 + 0.8 ** 2)) / 0.2 ** 2)).toBe(30);
    expect(plantsNeeded(-0.2, 0.8, separate(0.3))).toBe(30);
  });

  it("Cohen's small, medium and large effects: 394 (R; Cohen prints 393), 64, 26; a rule of 16/d² gives 64 too", () => {
    expect([0.2, 0.5, 0.8].map((d) => plantsNeeded(1, 0.8, separate(unevennessFor(d))))).toEqual([394, 64, 26]);
    expect(16 / 0.5 ** 2).toBe(64);
  });

  it("a gap of one standard deviation with 90 %: 22.02 → 23 (R's help page of power.t.test)", () => {
    expect(plantsNeeded(1, 0.9, separate(unevennessFor(1)))).toBe(23);
  });

  it("barley, variance 50, gap 10: 7.84 by the normal rule, 8.92 → 9 by the t test (R)", () => {
    expect(plantsNeeded(1, 0.8, separate(unevennessFor(10 / Math.sqrt(50))))).toBe(9);
  });

  it("pairs, a gap of one standard deviation of differences: 9.938 → 10 (R)", () => {
    expect(plantsNeeded(1, 0.8, planOf(unevennessFor(Math.SQRT2), 2, -1))).toBe(10);
  });

  it("the printed table of 80 % chances", () => {
    const changes = [0.2, 0.25, 0.3, 0.5, 1, -0.2, -0.3, -0.5];
    const table = [
      [0.15, 12, 9, 7, 4, 3, 9, 5, 3],
      [0.2, 21, 14, 11, 6, 3, 14, 7, 3],
      [0.25, 31, 22, 16, 8, 4, 22, 10, 4],
      [0.3, 45, 30, 23, 11, 5, 30, 13, 5],
      [0.35, 60, 41, 30, 14, 6, 41, 17, 6],
      [0.4, 78, 53, 39, 18, 8, 53, 22, 8],
    ];
    for (const [unevenness = 0, ...row] of table) {
      expect(changes.map((change) => plantsNeeded(change, 0.8, separate(unevenness)))).toEqual(row);
    }
  });
});

describe("plantsNeeded finds the smallest number", () => {
  it("because the chance never falls as plants are added", () => {
    for (const [k, b] of [
      [2, 0],
      [5, 0],
      [2, -1],
      [4, -1],
      [3, 4],
    ] as const) {
      for (const [change, unevenness] of [
        [0.1, 0.4],
        [-0.3, 0.3],
        [1, 0.2],
        [4, 2.5],
      ] as const) {
        const chances = Array.from({ length: 499 }, (_, i) => power(change, i + 2, planOf(unevenness, k, b)));
        const known = chances.filter((chance) => typeof chance === "number");
        for (const [i, chance] of known.slice(1).entries()) {
          expect(chance).toBeGreaterThanOrEqual((known[i] ?? 0) - 1e-13);
        }
      }
    }
  });

  it("500 are still practical, one more is not: power.t.test(n = 499.5 and 500.5, power = 0.8, strict = TRUE)$delta", () => {
    expect(plantsNeeded(1, 0.8, separate(unevennessFor(0.17744723960420422)))).toBe(500);
    expect(plantsNeeded(1, 0.8, separate(unevennessFor(0.1772695385668113)))).toEqual({ absent: "not-practical" });
  });

  it.each([2, 3, 9, 40, 499, 500])("a chance that %d plants reach exactly needs no more", (plants) => {
    const plan = planOf(0.9, 4, 0);
    expect(plantsNeeded(0.25, figure(power(0.25, plants, plan)), plan)).toBe(plants);
  });

  it("one plant fewer misses the chance; none below two; none above 500", () => {
    const plan = planOf(0.35, 3, 0);
    const n = figure(plantsNeeded(0.4, 0.8, plan));
    expect(figure(power(0.4, n, plan))).toBeGreaterThanOrEqual(0.8);
    expect(figure(power(0.4, n - 1, plan))).toBeLessThan(0.8);
    expect(plantsNeeded(4, 0.5, separate(0.01))).toBe(2);
    expect(plantsNeeded(0.01, 0.8, separate(0.5))).toEqual({ absent: "not-practical" });
  });
});

it.each([
  [23, 0.1, null, 26],
  [9, 0.1, null, 10],
  [18, 0.1, 4, 20],
  [18, 0, 4, 20],
  [11, 0, "one each", 11],
  [21, 0.3, null, 30],
] as const)("setOut: %d needed, losses %d, beds %s: %d, by arithmetic", (needed, losses, beds, expected) => {
  expect(setOut(needed, losses, beds)).toBe(expected);
});
