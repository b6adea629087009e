import { expect, it } from "vitest";
import type { Verdict } from "../../../src/nouns/verdict";
import { findingSentences } from "../../../src/words/report/findingSentences";
import { against, manyTreatments, treatment } from "../manyRecords";

const told = (verdict: Verdict, change: number) =>
  findingSentences(
    manyTreatments({
      usual: "bare soil",
      treatments: [
        treatment({
          name: "straw",
          plants: 8,
          mean: 5,
          againstUsual: against({ change, changeRange: { low: change - 0.0002, high: change + 0.0002 }, verdict }),
        }),
      ],
    }),
  );

it.each([
  ["up-enough", 0.0004, "Straw gave hardly more per plant than bare soil."],
  ["down-small", -0.0004, "Straw gave hardly less per plant than bare soil."],
  ["open", 0.0004, "Straw gave as much per plant as bare soil."],
  ["up-enough", 0.4, "Straw gave 40 % more per plant than bare soil."],
] as const)(
  "%s, a change of %d: only what is settled keeps a direction too small to be shown",
  (verdict, change, sentence) => {
    expect(told(verdict, change)).toContain(sentence);
  },
);
