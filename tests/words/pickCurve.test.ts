import { expect, it } from "vitest";
import type { PickCurve } from "../../src/nouns/findings/pickCurve";
import { tellPickCurve } from "../../src/words/pickCurve";
import { wordCount } from "../../src/words/wordCount";

/** As many treatments, each with a label of seven words, half picked by day 11, 12 and so on. */
const finding = (treatments: number) => {
  const found: PickCurve = {
    finding: "pick-curve",
    unit: "g",
    treatments: Array.from({ length: treatments }, (_, at) => ({
      name: `${"ABCDE"[at]} is a mulch of old hay`,
      setOut: 8,
      running: [0, 100],
      lastWeek: 0,
      halfBy: 11 + at,
    })),
    steps: [45_000, 45_030],
    perPlant: true,
    yearsKnown: true,
    leftOut: 0,
    weightsMissing: 0,
    cautions: () => [],
  };
  return tellPickCurve(found).finding().split(". ")[0] ?? "";
};

it.each([
  [1, "day 11 (A is a mulch of old…)"],
  [2, "day 11 (A is a mulch of old…) and day 12 (B is a mulch of old…)"],
  [3, "day 11 (A is a mulch…), day 12 (B is a mulch…) and day 13 (C is a mulch…)"],
  [4, "day 11 (A is…), day 12 (B is…), day 13 (C is…) and day 14 (D is…)"],
  [5, "day 11 (A is…), day 12 (B is…), day 13 (C is…) and 2 more in the table"],
])("cuts the labels of %d treatments so that the sentence keeps to 25 words", (treatments, days) => {
  expect(finding(treatments)).toBe(`Half the harvest was in by ${days}`);
  expect(wordCount(finding(treatments))).toBeLessThanOrEqual(25);
});
