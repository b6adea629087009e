import { describe, expect, test } from "vitest";
import type { Explanation } from "../../src/nouns/explanation";
import { cautionLine } from "../../src/words/caution";
import { cellWords } from "../../src/words/cellWords";
import { explain } from "../../src/words/explain";
import { methodText } from "../../src/words/method";
import { problemSentence } from "../../src/words/problem";
import { verdictText } from "../../src/words/verdict";
import { beginsWithLostWord, isNoneWord } from "./dataWords";
import { everyTypical } from "./everyTypical";
import { neverSay, readingGrade, sentencesOf, wordsOf } from "./plainEnglish";
import { typicalCautions } from "./typicalCautions";
import { typicalComparisons } from "./typicalComparisons";
import { typicalProblems } from "./typicalProblems";

/** Labels from the sheet are not ours, so their comparison is held to its length and not to its grade. */
const strangeLabels = "labels that hold anything";

function partsOf({ finding, say, compared, luck, lookOutFor, next, workings }: Explanation): readonly string[] {
  const cautions = lookOutFor.map(({ sentence }) => sentence);
  return [finding, say, compared, luck.join(" "), ...cautions, next.join(" "), workings.join(" ")].filter(
    (part) => part !== "",
  );
}

const explained = Object.entries(everyTypical).flatMap(([title, one]) =>
  [...partsOf(explain(one)), cellWords(one)].map((text) => [title, text] as const),
);
/** A list of names or of things to show is as long as it is; what is ours stands before it. */
const problems = typicalProblems.map(
  (problem) => [problem.problem, problemSentence(problem).replace(/: [^:.]*\.$/, ".")] as const,
);
const cautions = typicalCautions.map((caution) => [caution.caution, cautionLine(caution).sentence] as const);
const sentences = [...explained, ...problems, ...cautions];

test.each(sentences.filter(([title]) => title !== strangeLabels))("%s: reads at grade 8 or below: %s", (_, text) => {
  expect(readingGrade(text)).toBeLessThanOrEqual(8);
});

describe.each(sentences)("%s: %s", (_, text) => {
  test("has sentences of at most 25 words", () => {
    const tooLong = sentencesOf(text).filter((sentence) => wordsOf(sentence).length > 25);
    expect(tooLong).toEqual([]);
  });

  test("claims nothing that METHODS 6.3 forbids", () => {
    expect(neverSay.filter((claim) => claim.test(text))).toEqual([]);
  });

  test("is no none-word and begins with no lost-word, so that it is never read as data", () => {
    expect(isNoneWord(text) || beginsWithLostWord(text)).toBe(false);
  });

  test("is whole: begins as a sentence, ends as one, with no double space", () => {
    expect(text).toMatch(/[.?]$/);
    expect(text).not.toMatch(/ {2}|undefined\b(?! *[;.])|\bnull\b/);
  });
});

test("verdicts and methods claim nothing forbidden and are never read as data", () => {
  const texts = Object.values(typicalComparisons).flatMap((found) => [verdictText(found.verdict), methodText(found)]);
  const wrong = texts.filter(
    (text) => isNoneWord(text) || beginsWithLostWord(text) || neverSay.some((claim) => claim.test(text)),
  );
  expect(wrong).toEqual([]);
});
