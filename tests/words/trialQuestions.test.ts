import { expect, test } from "vitest";
import { trialAnswers, trialQuestions } from "../../src/nouns/trialNotes";
import { answerText, openQuestions, questionText } from "../../src/words/trialQuestions";
import { neverSay, readingGrade, wordsOf } from "./plainEnglish";

test("the questions are asked as approved, in METHODS 9.3's order", async () => {
  const asked = trialQuestions.map((question, at) => `${at + 1}  ${questionText(question)}`);
  const offered = trialAnswers.map(answerText).join(" / ");
  await expect(`${asked.join("\n")}\n${offered}\n`).toMatchFileSnapshot("approved/trial-questions.txt");
});

test.each(trialQuestions.map(questionText))("%s is one plain question", (text) => {
  expect(text).toMatch(/^[A-Z].*\?$/);
  expect(wordsOf(text).length).toBeLessThanOrEqual(25);
  expect(readingGrade(text)).toBeLessThanOrEqual(8);
  expect(neverSay.filter((claim) => claim.test(text))).toEqual([]);
});

test("openQuestions counts the answered ones, “don’t know” among them, and says nothing once all are", () => {
  expect(openQuestions({ answers: { "one-batch": "yes", "equal-space": "dont-know" } })).toBe(
    "Trial questions: 2 of 11 answered. The part Trial asks the rest.",
  );
  expect(openQuestions({ answers: Object.fromEntries(trialQuestions.map((one) => [one, "dont-know"])) })).toBe("");
});
