import { expect, it } from "vitest";
import { near } from "../near";
import { cell, matrix, number } from "./call";

it("shows the change alone; the table has that one label", () => {
  const change = number("SMALLESTCHANGE", 8, 0.3);
  expect(matrix("SMALLESTCHANGE", 8, 0.3, "table")).toEqual([["Smallest change", change]]);
  expect(cell("SMALLESTCHANGE", 8, 0.3, "smallest change")).toBe(change);
});

it("is the change that is seen with the chance wanted, either way", () => {
  for (const [treatments, beds] of [
    [2, null],
    [4, null],
    [3, 4],
    [3, "one each"],
  ] as const) {
    for (const [direction, chance] of [
      ["more", 0.8],
      ["less", 0.8],
      ["More", 0.6],
    ] as const) {
      const change = number("SMALLESTCHANGE", 8, 0.2, null, treatments, beds, chance, direction);
      expect(change < 0).toBe(direction === "less");
      near("chance", number("CHANCETOSEE", change, 8, 0.2, null, treatments, beds), chance, { relative: 1e-9 });
    }
  }
});

it("the chance is 80 % and the direction 'more' when left out", () => {
  expect(cell("SMALLESTCHANGE", 8, 0.3)).toBe(cell("SMALLESTCHANGE", 8, 0.3, null, 2, null, 0.8, "more"));
});

it("none up to +499 %, or down to −99 %: too few plants", () => {
  expect(cell("SMALLESTCHANGE", 2, 0.3)).toBe("none: too few plants");
  expect(cell("SMALLESTCHANGE", 3, 0.9, null, null, null, null, "less")).toBe("none: too few plants");
  expect(number("SMALLESTCHANGE", 2, 0.2)).toBeGreaterThan(4);
  expect(matrix("SMALLESTCHANGE", 2, 0.3, "table")).toEqual([["Smallest change", "none: too few plants"]]);
});
