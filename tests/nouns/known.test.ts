import { expect, it } from "vitest";
import { isKnown } from "../../src/nouns/known";

it("a figure is known, 0 too; a reason is not", () => {
  expect(isKnown(0)).toBe(true);
  expect(isKnown({ absent: "one-plant" })).toBe(false);
});
