import { describe, expect, it } from "vitest";
import { cellWords } from "../../src/words/cellWords";
import { explain } from "../../src/words/explain";
import { askedMany, type Options, type PlantRow } from "./askedMany";
import { sentencesOf, wordsOf } from "./plainEnglish";

/** So many treatments, five plants each, every other one far ahead of the first. */
function trial(treatments: number, options: Options) {
  const rows = Array.from({ length: 5 * treatments }, (_, at): PlantRow => {
    const [plant, treatment] = [at % 5, Math.floor(at / 5)];
    const amount = 1000 + 700 * (treatment % 2) + 40 * treatment + 90 * plant * (1 + (treatment % 3));
    return [amount, `mulch ${treatment + 1}`];
  });
  return askedMany(rows, options);
}

/** An explanation's parts, and the words of a cell. */
function told(treatments: number, options: Options) {
  const found = trial(treatments, options);
  const { finding, say, compared, luck, lookOutFor, next, workings } = explain(found);
  const cautions = lookOutFor.map(({ sentence }) => sentence);
  const parts = [finding, say, compared, ...luck, ...cautions, ...next, ...workings];
  return { treatments, parts, words: wordsOf(parts.join(" ")).length, inCell: wordsOf(cellWords(found)).length };
}

describe.each([
  ["against the usual", { usual: "mulch 1" }],
  ["all pairs", {}],
  ["own unevenness", { usual: "mulch 1", how: "own unevenness" }],
] as const)("an explanation of many treatments stays readable: %s", (_, options) => {
  const [few, ...more] = [2, 4, 8, 20].map((treatments) => told(treatments, options));

  it("grows by 30 words a treatment at most", () => {
    const start = few?.words ?? Number.NaN;
    expect(start).toBeLessThanOrEqual(180);
    for (const { treatments, words } of more) expect(words).toBeLessThanOrEqual(start + 30 * (treatments - 2));
  });

  it("has no sentence of more than 25 words", () => {
    const long = more.flatMap(({ parts }) => parts.flatMap(sentencesOf));
    expect(long.filter((sentence) => wordsOf(sentence).length > 25)).toEqual([]);
  });

  it("fits a cell: 60 words, and 15 more for each treatment", () => {
    for (const { treatments, inCell } of more) expect(inCell).toBeLessThanOrEqual(60 + 15 * treatments);
  });
});
