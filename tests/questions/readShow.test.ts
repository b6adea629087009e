import { expect, it } from "vitest";
import { readShow } from "../../src/questions/readShow";
import { range } from "./range";

it("is the text typed, or null", () => {
  expect(readShow(range("show", "Change low"))).toBe("Change low");
  expect(readShow(range("show", 0.8))).toBe("0.8");
  for (const nothing of [null, undefined, range("show", null), range("show", " ")])
    expect(readShow(nothing)).toBeNull();
});

it("takes one cell", () => {
  expect(readShow(range("show", ["words", "say"]))).toMatchObject({ problem: "one-cell-wanted", rows: 2 });
});
