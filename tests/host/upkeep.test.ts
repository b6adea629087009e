import { expect, it } from "vitest";
import { asTyped } from "../../src/host/upkeep";

it.each([
  ["2/3", "'2/3"],
  ["=A1", "'=A1"],
  [4.5, 4.5],
  [true, true],
  [null, ""],
  [{ error: "#N/A" }, "'#N/A"],
] as const)("%j is typed as %j", (value, typed) => {
  expect(asTyped(value)).toBe(typed);
});
