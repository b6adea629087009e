import { expect, test } from "vitest";
import { luckLesson } from "../../src/words/luckLesson";
import { neverSay, readingGrade, wordsOf } from "./plainEnglish";

test("METHODS 11's case: about one in seven", () => {
  expect(luckLesson({ unevenness: 0.25, lead: 0.3, chance: 0.1434 })).toBe(
    "Say that plants treated alike differ by 25 %. Luck alone then gives a lead of 30 % or more in about 14 of 100 trials.",
  );
});

test.each([0, 0.004, 0.5, 0.999, 1])("is plainly said at a chance of %d", (chance) => {
  const told = luckLesson({ unevenness: 0.25, lead: 0.3, chance });
  expect(wordsOf(told).length).toBeLessThanOrEqual(25);
  expect(readingGrade(told)).toBeLessThanOrEqual(8);
  expect(neverSay.filter((claim) => claim.test(told))).toEqual([]);
});
