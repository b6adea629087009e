import { expect, it } from "vitest";
import { safeOutput } from "../../src/cells/output";

it("lets numbers and texts pass as they are", () => {
  for (const output of [0, -1.5, 1e308, "", "no range"]) expect(safeOutput(output)).toBe(output);
});

it("tells what is beyond numbers in words", () => {
  for (const output of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    expect(safeOutput(output)).toBe("too large to work out");
  }
});
