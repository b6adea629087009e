import { describe, expect, it } from "vitest";
import { near } from "../near";
import { cell, labels, matrix, number } from "./call";

const notPractical = "more than 500: not practical";

it("shows the plants to set out, and six labels in METHODS' order", () => {
  expect(cell("PLANTSNEEDED", 0.3, 0.25)).toBe(18);
  const table = matrix("PLANTSNEEDED", 0.3, 0.25, "table");
  expect(labels(table)).toEqual([
    "Set out per treatment",
    "Needed after losses",
    "In all",
    "Chance to see it",
    "Chance it is enough to matter",
    "Smallest change with half as many",
  ]);
  expect(table.slice(0, 3).map(([, value]) => value)).toEqual([18, 16, 36]);
  for (const [label, value] of table) expect(cell("PLANTSNEEDED", 0.3, 0.25, label)).toBe(value);
});

describe("set out", () => {
  it("allows for losses of 10 % unless told otherwise, rounded up", () => {
    expect(cell("PLANTSNEEDED", 0.3, 0.25, null, null, null, null, 0)).toBe(16);
    expect(cell("PLANTSNEEDED", 0.3, 0.25, null, null, null, null, 0.2)).toBe(20);
    expect(cell("PLANTSNEEDED", 0.3, 0.25, null, null, null, null, "25%")).toBe(22);
  });

  it("a whole quotient is not rounded up: 9 at 10 % are 10", () => {
    expect(cell("PLANTSNEEDED", 0.25, 0.15, "Needed after losses")).toBe(9);
    expect(cell("PLANTSNEEDED", 0.25, 0.15)).toBe(10);
  });

  it("with beds, the next multiple; with one each, no multiple", () => {
    expect(cell("PLANTSNEEDED", 0.3, 0.25, null, 2, 4)).toBe(20);
    expect(Number(cell("PLANTSNEEDED", 0.3, 0.25, null, 3, 7)) % 7).toBe(0);
    const needed = Number(cell("PLANTSNEEDED", 0.3, 0.25, "Needed after losses", 3, "one each"));
    expect(cell("PLANTSNEEDED", 0.3, 0.25, null, 3, "one each")).toBe(Math.ceil(needed / 0.9));
  });

  it("in all is treatments times set out", () => {
    for (const treatments of [2, 3, 7, 20]) {
      const [each, all] = [null, "In all"].map((show) => Number(cell("PLANTSNEEDED", 0.3, 0.25, show, treatments)));
      expect(all).toBe(treatments * (each ?? 0));
    }
  });
});

describe("needed", () => {
  it("is the fewest whose chance reaches the one wanted", () => {
    for (const [change, unevenness, treatments, beds, chance] of [
      [0.3, 0.25, 2, null, 0.8],
      [0.5, 0.35, 4, null, 0.9],
      [-0.3, 0.2, 3, "one each", 0.8],
      [1, 0.3, 2, null, 0.6],
    ] as const) {
      const needed = number("PLANTSNEEDED", change, unevenness, "Needed after losses", treatments, beds, chance);
      const chanceOf = (plants: number) => number("CHANCETOSEE", change, plants, unevenness, null, treatments, beds);
      expect(chanceOf(needed)).toBeGreaterThanOrEqual(chance);
      if (needed > 2) expect(chanceOf(needed - 1)).toBeLessThan(chance);
      const shown = number("PLANTSNEEDED", change, unevenness, "Chance to see it", treatments, beds, chance);
      near("chance at needed", shown, chanceOf(needed));
    }
  });

  it("half as many: the smallest change at max(2, ⌊n/2⌋), in the direction of the change", () => {
    const half = number("PLANTSNEEDED", 0.3, 0.25, "Smallest change with half as many");
    near("8 each", half, number("SMALLESTCHANGE", 8, 0.25));
    const fall = number("PLANTSNEEDED", -0.3, 0.25, "Smallest change with half as many");
    near("5 each, less", fall, number("SMALLESTCHANGE", 5, 0.25, null, null, null, null, "less"));
    const odd = number("PLANTSNEEDED", 1, 0.2, "Smallest change with half as many");
    near("2 each", odd, number("SMALLESTCHANGE", 2, 0.2));
  });

  it("enough to matter: as CHANCETOSEE says at needed, for the worthwhile given", () => {
    for (const worthwhile of [null, 0.05, 0.25, -0.25]) {
      const shown = number("PLANTSNEEDED", 0.3, 0.25, "Chance it is enough to matter", 2, null, null, null, worthwhile);
      near("enough", shown, number("CHANCETOSEE", 0.3, 16, 0.25, "Chance it is enough to matter", 2, null, worthwhile));
    }
  });

  it("more than 500 is not practical, said in every figure's place", () => {
    expect(cell("PLANTSNEEDED", 0.05, 0.5)).toBe(notPractical);
    for (const [label, value] of matrix("PLANTSNEEDED", 0.05, 0.5, "table"))
      expect(value, String(label)).toBe(notPractical);
    // 500 is on n, not on what is set out
    const needed = number("PLANTSNEEDED", 0.0855, 0.46, "Needed after losses");
    expect(needed).toBeGreaterThan(455);
    expect(needed).toBeLessThanOrEqual(500);
    expect(cell("PLANTSNEEDED", 0.0855, 0.46)).toBeGreaterThan(500);
  });
});

describe("unevenness", () => {
  it.each([null, "", [[null]], [[""]]])("left blank (%j) is 35 %, and a caution says so", (blank) => {
    expect(matrix("PLANTSNEEDED", 0.3, blank, "table")).toEqual(matrix("PLANTSNEEDED", 0.3, 0.35, "table"));
    expect(cell("PLANTSNEEDED", 0.3, blank, "cautions")).toMatch(/35 % unevenness is a general guess/);
    expect(cell("PLANTSNEEDED", 0.3, 0.35, "cautions")).not.toMatch(/general guess/);
    expect(cell("CHANCETOSEE", 0.3, 8, blank, "cautions")).toMatch(/35 % unevenness is a general guess/);
    expect(cell("SMALLESTCHANGE", 8, blank, "cautions")).toMatch(/35 % unevenness is a general guess/);
  });
});

describe("percents", () => {
  it.each(["30%", "30 %", "0.3", 0.3])("%s is 0.3, and the words echo the value read", (change) => {
    expect(cell("PLANTSNEEDED", change, "25%")).toBe(18);
    expect(cell("CHANCETOSEE", change, 8, "25 %", "words")).toContain("+30 %");
  });
});

describe("cautions", () => {
  it("under four plants each cannot settle anything", () => {
    expect(cell("PLANTSNEEDED", 2, 0.2, "Needed after losses")).toBe(3);
    expect(cell("PLANTSNEEDED", 2, 0.2, "cautions")).toMatch(/Under four plants each/);
    expect(cell("PLANTSNEEDED", 0.3, 0.2, "cautions")).not.toMatch(/Under four/);
    expect(cell("CHANCETOSEE", 2, 3, 0.2, "cautions")).toMatch(/Under four plants each/);
    expect(cell("CHANCETOSEE", 2, 4, 0.2, "cautions")).not.toMatch(/Under four plants each/);
    expect(cell("SMALLESTCHANGE", 3, 0.2, "cautions")).toMatch(/Under four plants each/);
  });

  it("a chance under 50 %", () => {
    expect(cell("CHANCETOSEE", 0.2, 6, 0.3, "cautions")).toMatch(/More likely to miss/);
    expect(cell("CHANCETOSEE", 0.8, 8, 0.3, "cautions")).not.toMatch(/More likely to miss/);
    expect(cell("PLANTSNEEDED", 0.3, 0.25, "cautions", null, null, 0.3)).toMatch(/More likely to miss/);
  });
});
