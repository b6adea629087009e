import { expect, it } from "vitest";
import { notesFromText, textOfNotes } from "../../src/host/notesText";
import { blankNotes, type TrialNotes, trialQuestions } from "../../src/nouns/trialNotes";

const notes: TrialNotes = {
  answers: { "one-difference": "yes", "drawn-by-lot": "no", "equal-space": "dont-know" },
  crop: 'courgettes "Nero"',
  measure: "harvest per plant",
  unit: "grams",
  place: "Marlpit Corner, Łódź",
  season: "2023",
  worthwhile: -0.1,
  stopDate: 45_168,
  onlySheet: "The trial",
};

it("reads the notes back that it wrote, blank ones too", () => {
  expect(notesFromText(textOfNotes(notes))).toEqual(notes);
  expect(notesFromText(textOfNotes(blankNotes))).toEqual(blankNotes);
});

it.each(trialQuestions)("keeps all three answers to %s", (question) => {
  for (const answer of ["yes", "no", "dont-know"] as const) {
    const answered = { ...blankNotes, answers: { [question]: answer } };
    expect(notesFromText(textOfNotes(answered)).answers).toEqual({ [question]: answer });
  }
});

it.each([null, "", "{", "null", "3", '"courgettes"', "[]", "{}"])("%s holds no notes", (text) => {
  expect(notesFromText(text)).toEqual(blankNotes);
});

it("leaves out what is not of its kind and keeps the rest", () => {
  const kept = {
    answers: { "one-difference": "perhaps", "one-batch": 1, "no-such-question": "yes", "measure-first": "no" },
    crop: 3,
    place: "Marlpit Corner",
    worthwhile: "10 %",
    stopDate: null,
  };
  expect(notesFromText(JSON.stringify(kept))).toEqual({
    ...blankNotes,
    answers: { "measure-first": "no" },
    place: "Marlpit Corner",
  });
});

it("a worthwhile change of nothing is none given", () => {
  expect(notesFromText('{"worthwhile":0}').worthwhile).toBe(null);
});
