import { expect, test } from "vitest";
import { blankNotes, type TrialNotes } from "../../src/nouns/trialNotes";
import { trialPhrase } from "../../src/words/trialPhrase";
import { group, strawFinding } from "../pane/strawFinding";
import { wordsOf } from "./plainEnglish";
import { marlpitNotes } from "./report/tellable";

const straw = strawFinding();
const phrase = (notes: Partial<TrialNotes>) => trialPhrase(straw, { ...blankNotes, ...notes });

test("the demo trial: what was measured, where and when", () => {
  expect(trialPhrase(straw, marlpitNotes)).toBe("grams of courgettes per plant, Marlpit Corner, 2023");
});

test("what is not known leaves no trace", () => {
  expect(phrase({ crop: "courgettes" })).toBe("courgettes");
  expect(phrase({ unit: "grams", season: "2023" })).toBe("grams per plant, 2023");
  expect(phrase({ crop: "courgettes", place: "Marlpit Corner" })).toBe("courgettes, Marlpit Corner");
  expect(phrase({ unit: "grams" })).toBe("");
  expect(phrase({ measure: "harvest per plant" })).toBe("");
});

test("another measure than the trial's main one is not called by its name", () => {
  const pods = strawFinding({
    unit: null,
    usual: group("usual", "Pods, none", [1, 2]),
    tried: group("new", "Pods, straw", [2, 3]),
  });
  expect(trialPhrase(pods, marlpitNotes)).toBe("courgettes, Marlpit Corner, 2023");
});

test("stays short, however much is typed", () => {
  const long = "one two three four five six seven eight";
  const told = phrase({ crop: long, unit: "g", place: long, season: long });
  expect(wordsOf(told).length).toBeLessThanOrEqual(20);
});
