import { describe, expect, test } from "vitest";
import type { TrialAnswer } from "../../../src/nouns/trialNotes";
import { trialQuestions } from "../../../src/nouns/trialNotes";
import { reportOf } from "../../../src/words/report/reportOf";
import { textsOf } from "../../../src/words/report/textsOf";
import { neverSay, readingGrade, sentencesOf, wordsOf } from "../plainEnglish";
import { marlpitNotes, telling, typicalTellable } from "./tellable";

/** Labels from the sheet are not ours, so that a text full of them is held to its length and not to its grade. */
const strangeLabels = "labels that hold anything";

const answersAll = (answer: TrialAnswer) => Object.fromEntries(trialQuestions.map((question) => [question, answer]));
const reports = typicalTellable.flatMap(([title, finding]) =>
  (["yes", "no"] as const).map((answer) => {
    const notes = { ...marlpitNotes, answers: answersAll(answer) };
    return [title, reportOf(telling([finding], { notes, drawNumber: answer === "yes" ? 1431 : null }))] as const;
  }),
);

describe.each(reports)("%s", (title, report) => {
  const [talk = "", newsletter = "", slide = ""] = textsOf(report).map(({ text }) => text);
  const prose = [talk, newsletter, report.laidOut.join(" ")];
  const texts = [...prose, slide];

  test("has sentences and lines of at most 25 words", () => {
    const pieces = texts.flatMap((text) => text.split("\n")).flatMap(sentencesOf);
    expect(pieces.filter((piece) => wordsOf(piece).length > 25)).toEqual([]);
  });

  test("claims nothing that METHODS 6.3 forbids, shows no p and names no function of the sheet", () => {
    const wrong = texts.filter((text) =>
      [...neverSay, /\bp =|\bp <|=FAIRBED|\b(?!HYPERLINK)[A-Z]{6,}\b/].some((claim) => claim.test(text)),
    );
    expect(wrong).toEqual([]);
  });

  test("reads at grade 8 or below", () => {
    if (title === strangeLabels) return;
    for (const text of prose) expect(readingGrade(text), text).toBeLessThanOrEqual(8);
  });

  test("the three texts get shorter", () => {
    const [long = 0, middle = 0, short = 0] = [talk, newsletter, slide].map((text) => wordsOf(text).length);
    expect(long).toBeGreaterThan(middle);
    expect(middle).toBeGreaterThan(short);
  });
});
