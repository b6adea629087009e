import { expect, it } from "vitest";
import { isErrorCell } from "../../src/nouns/cell";

it("tells an error value from an empty cell, a number, a text and a truth value", () => {
  expect(isErrorCell({ error: "#N/A" })).toBe(true);
  for (const cell of [null, 0, "", "#N/A", false]) expect(isErrorCell(cell)).toBe(false);
});
