import { expect, test } from "vitest";
import type { Problem } from "../../src/nouns/problem";
import { problemSentence } from "../../src/words/problem";
import { typicalProblems } from "./typicalProblems";

test("problemSentence gives every problem its approved sentence", async () => {
  const lines = typicalProblems.map((problem) => `${problem.problem}\n  ${problemSentence(problem)}`);
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("approved/problems.txt");
});

test("every kind of problem is among the approved ones", () => {
  const kinds: Readonly<Record<Problem["problem"], true>> = {
    "missing-argument": true,
    "unknown-show": true,
    "show-elsewhere": true,
    "unknown-choice": true,
    "one-cell-wanted": true,
    "not-a-number": true,
    "not-whole": true,
    "percent-as-points": true,
    "percent-outside": true,
    "zero-worthwhile": true,
    "zero-unevenness": true,
    "price-not-above-zero": true,
    "negative-amount": true,
    "total-at-end": true,
    "average-at-end": true,
    "shapes-differ": true,
    "ranges-swapped": true,
    "units-differ": true,
    "no-usable-plants": true,
    "no-usable-trials": true,
    "usual-zero": true,
    "numbers-for-planted": true,
    "planted-unclear": true,
    "all-lost": true,
    "no-change": true,
    "fall-too-big": true,
    "too-few-each": true,
    "not-a-multiple": true,
    "no-freedom": true,
    "no-picks": true,
    "no-dates": true,
    "most-have-two-names": true,
    "unpicked-without-treatment": true,
    "too-many-columns": true,
    "two-seasons": true,
    "plants-each-lacks": true,
    "number-without-name": true,
    "not-a-date": true,
    "not-plain": true,
    "unknown-treatment": true,
    "no-draw-number": true,
    "draw-number": true,
    "too-many-spots": true,
    "name-twice": true,
    "error-for-name": true,
    "too-few-treatments": true,
    "too-many-treatments": true,
    "usual-not-named": true,
    "treatment-is-bed": true,
    "bed-is-unit": true,
    "no-shared-bed": true,
    "own-unevenness-in-beds": true,
  };
  expect(new Set(typicalProblems.map(({ problem }) => problem))).toEqual(new Set(Object.keys(kinds)));
});

test.each([
  [
    { problem: "average-at-end", place: place("D10"), endBefore: place("D9") },
    "Cell D10 is the average of the cells above it. End the range at D9.",
  ],
  [
    { problem: "show-elsewhere", given: "pairs", argument: "how", placesOn: 1 },
    "“pairs” is a way to compare; it goes one place further on.",
  ],
  [
    { problem: "numbers-for-planted", numbers: 5, planted: 6 },
    "5 numbers for 6 plants. Pick totals? Add them first. A plant not weighed? Type “not weighed”.",
  ],
] as const)("METHODS' own wording: %o", (problem, sentence) => {
  expect(problemSentence(problem)).toBe(sentence);
});

test("a percent typed as points is told back as it would be read, and as it should be typed", () => {
  expect(problemSentence({ problem: "percent-as-points", argument: "worthwhile", given: 10 })).toContain(
    "would mean 1000 %. Type 10% (or 0.1).",
  );
});

function place(name: string) {
  return { argument: "usual", row: Number(name.slice(1)), column: null, cell: name };
}
