import { expect, it } from "vitest";
import { NEEDS_A_LOOK } from "../../src/nouns/reading";
import { LISTED_KINDS, NUMBERS_READ, READING_LABELS } from "../../src/words/readingLabel";

it("the lines are METHODS 8.11's, worst first, those that need a look before the others", () => {
  const lines =
    "Unreadable · Possible totals or averages · Possible doubles · Looks like a date Excel made · Unusually big or " +
    "small · Errors · Empty or not recorded · Names nearly alike · Names used once · Lost · None, read as 0 · Zeros · " +
    "Units converted · Marks removed · Numbers read";
  expect([...LISTED_KINDS.map((kind) => READING_LABELS[kind]), NUMBERS_READ].join(" · ")).toBe(lines);
  expect(LISTED_KINDS.slice(0, NEEDS_A_LOOK.length)).toEqual([...NEEDS_A_LOOK]);
});
