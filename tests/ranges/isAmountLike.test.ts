import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { isAmountLike } from "../../src/ranges/isAmountLike";

it.each<[Cell, boolean]>([
  [300, true],
  ["177 g", true],
  ["lost (slugs)", true],
  ["none", true],
  ["not weighed", true],
  [null, true],
  [{ error: "#N/A" }, true],
  ["Straw", false],
  ["slugs", false],
])("%j may stand among amounts: %s", (cell, may) => {
  expect(isAmountLike(cell)).toBe(may);
});
