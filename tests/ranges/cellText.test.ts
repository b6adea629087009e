import { expect, it } from "vitest";
import { cellText } from "../../src/ranges/cellText";

it.each([
  [12.5, "12.5"],
  ["a ", "a "],
  [true, "TRUE"],
  [null, ""],
  [{ error: "#N/A" }, "#N/A"],
])("cellText of %j is %j", (cell, text) => {
  expect(cellText(cell)).toBe(text);
});
