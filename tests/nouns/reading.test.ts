import { expect, it } from "vitest";
import { NEEDS_A_LOOK, type ReadingKind } from "../../src/nouns/reading";

it("what was read for certain needs no look", () => {
  const certain: readonly ReadingKind[] = [
    "lost",
    "none-as-zero",
    "zero",
    "unit-converted",
    "mark-removed",
    "date-settled",
  ];
  expect(certain.filter((kind) => NEEDS_A_LOOK.some((look) => look === kind))).toEqual([]);
  expect(new Set(NEEDS_A_LOOK).size).toBe(9);
});
