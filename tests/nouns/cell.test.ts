import { expect, it } from "vitest";
import { isEmpty, isErrorCell } from "../../src/nouns/cell";

it("tells an error value from an empty cell, a number, a text and a truth value", () => {
  expect(isErrorCell({ error: "#N/A" })).toBe(true);
  for (const cell of [null, 0, "", "#N/A", false]) expect(isErrorCell(cell)).toBe(false);
});

it.each([
  [undefined, true],
  [null, true],
  ["", true],
  [" \u00A0", true],
  [0, false],
  [false, false],
  ["-", false],
  [{ error: "#N/A" }, false],
])("isEmpty of %j is %s", (cell, empty) => {
  expect(isEmpty(cell)).toBe(empty);
});
