import { expect, it } from "vitest";
import { blankNotes, notesOn, trialQuestions } from "../../src/nouns/trialNotes";

it("the checklist asks eleven different questions, and blank notes answer none of them", () => {
  expect(new Set(trialQuestions).size).toBe(11);
  expect(Object.keys(blankNotes.answers)).toEqual([]);
});

it("notes about one sheet hold on that sheet only, others everywhere", () => {
  const notes = { ...blankNotes, crop: "courgettes" };
  expect(notesOn(notes, "Nets")).toBe(notes);
  const about = { ...notes, onlySheet: "Mulch" };
  expect(notesOn(about, "Mulch")).toBe(about);
  expect(notesOn(about, "Nets")).toBe(blankNotes);
});
