import { expect, it } from "vitest";
import { namesAlike } from "../../src/ranges/namesAlike";

it.each([
  ["bare", "bare soil"],
  ["grass", "grass clippings"],
  ["woodchip", "wood chip"],
  ["woodchip", "wood-chip"],
  ["straw", "starw"],
  ["straw", "strw"],
  ["straw", "strawe"],
  ["straw", "stram"],
  ["grass clippings", "gras clippins"],
  ["row 1", "row1"],
])("%s may be %s", (one, other) => {
  expect(namesAlike(one, other)).toBe(true);
  expect(namesAlike(other, one)).toBe(true);
});

it.each([
  ["straw", "woodchip"],
  ["b1-1", "b1-2"],
  ["plant 1", "plant 12"],
  ["straw", "no straw"],
  ["straw", "straw and manure"],
  ["straw", "straw + manure"],
  ["hay", "bay"],
  ["bed a", "bed b"],
  ["row 1 a", "row 1 b"],
  ["p12a", "p12b"],
  ["b1234-1", "c1234-1"],
  ["", "bare"],
  ["+", "-"],
  ["straw", "stamp"],
  ["a".repeat(41), "b".repeat(41)],
])("%s is not %s", (one, other) => {
  expect(namesAlike(one, other)).toBe(false);
  expect(namesAlike(other, one)).toBe(false);
});
