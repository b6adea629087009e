import { expect, it } from "vitest";
import { blankNotes, trialQuestions } from "../../src/nouns/trialNotes";

it("the checklist asks eleven different questions, and blank notes answer none of them", () => {
  expect(new Set(trialQuestions).size).toBe(11);
  expect(Object.keys(blankNotes.answers)).toEqual([]);
});
